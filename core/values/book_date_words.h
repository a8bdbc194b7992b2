// The words people write around and in the date of a book: months, seasons, centuries and their
// parts, "about" and "perhaps". All as foldForSearch leaves them.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace headcap::core {

// 1 to 12 for a month, 21 to 24 for a season (EDTF), by English, German, French, Latin names.
[[nodiscard]] std::optional<int> monthOrSeason(std::string_view word);
// "March", "spring".
[[nodiscard]] std::string_view monthName(int monthOrSeason);

// "16th", "3rd", "16.", "sixteenth", "xvi", "xvie": the number.
[[nodiscard]] std::optional<int> ordinal(std::string_view word);
// "16th", "21st".
[[nodiscard]] std::string ordinalText(int number);

// A part of a century: its first and last year within the hundred, and its name before "16th".
struct CenturyPart {
    int first = 0;
    int last = 0;
    std::string_view name; // "early ", "first half of the "
};
// Takes the part from before or behind "16th century", "xvi ex."; nothing where there is none.
[[nodiscard]] std::optional<CenturyPart> takeCenturyPart(std::string& text);
[[nodiscard]] std::optional<CenturyPart> centuryPartOf(int first, int last);

// Takes "century", "cent.", "Jh.", "siècle" from the end, "s.", "saec." from the head.
[[nodiscard]] bool takeCenturyWord(std::string& text);

// Takes one word or phrase of a kind from the head of the text, or from its end.
enum class DatePhrase {
    about,
    perhaps,
    era,
    beforeChrist,
    notBefore,
    notAfter,
    before,
    after,
    until,
    from,
    between
};
[[nodiscard]] bool takeAtHead(std::string& text, DatePhrase phrase);
[[nodiscard]] bool takeAtEnd(std::string& text, DatePhrase phrase);

// "n.d.", "s.a.", "undated".
[[nodiscard]] bool saysUndated(std::string_view text);

} // namespace headcap::core
