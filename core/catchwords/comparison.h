// A catchword against the first words of the page it points to, compared as a reader does:
// part-words, letter forms, abbreviations, one slip of a letter in a long word; headings, numbers,
// marginal notes and initials set apart are passed over. The answer is a grade and its reason.
#pragma once

#include <string_view>

namespace headcap::core {

enum class CatchwordVerdict {
    same,      // the same word, or the part of it that the compositor set
    variant,   // the same word spelt or set otherwise
    doubtful,  // may be: too short, too far off, or nothing to compare
    different, // another word
};

enum class CatchwordReason {
    equal,
    partOfWord,
    spelling,         // u/v, i/j, vv/w, doubled letters, th for t
    abbreviation,     // written out in one place, abbreviated in the other
    letterSlip,       // one letter wrong in a long word
    afterHeading,     // found behind a heading, running head, number or note
    numberPassedOver, // a number or mark before the word stands in one place only
    initialApart,     // the page lacks its first letter: an initial not read
    moreThanOneSlip,
    tooShort,         // agrees, but in too few letters to tell
    laterWordsDiffer, // the first words agree, those after do not
    formulaNotSpelt,  // the page begins with something the transcriber left out
    wordOfNote,       // the catchword is that of the notes, the text begins the page
    noCatchword,
    noText,
    otherWord,
};

struct CatchwordReading {
    std::string_view catchword;
    std::string_view nextFirstWords;
    std::string_view wordsBefore = {};     // the end of the page's last line
    std::string_view nextRunningHead = {}; // of the next page
};

struct CatchwordComparison {
    CatchwordVerdict verdict = CatchwordVerdict::doubtful;
    CatchwordReason reason = CatchwordReason::noCatchword;

    friend bool operator==(const CatchwordComparison&, const CatchwordComparison&) = default;
};

[[nodiscard]] CatchwordComparison compareCatchword(const CatchwordReading& reading);

[[nodiscard]] std::string_view wordOf(CatchwordVerdict verdict);
[[nodiscard]] std::string_view sentenceOf(CatchwordReason reason);

} // namespace headcap::core
