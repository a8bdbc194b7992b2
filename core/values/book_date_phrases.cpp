// The words that stand around a date, taken from it.
#include <algorithm>
#include <array>
#include <span>

#include "core/values/book_date_words.h"

namespace headcap::core {
namespace {

using std::string_view;

struct PartSpelling {
    string_view text;
    CenturyPart part;
};

// The thirds are those of common cataloguing usage; the hundred runs from 00 to 99, as in 15XX.
constexpr CenturyPart kEarly{0, 33, "early "};
constexpr CenturyPart kMiddle{34, 66, "mid-"};
constexpr CenturyPart kLate{67, 99, "late "};
constexpr auto kSpans = std::to_array<CenturyPart>({
    {0, 49, "first half of the "},
    {50, 99, "second half of the "},
    {0, 24, "first quarter of the "},
    {25, 49, "second quarter of the "},
    {50, 74, "third quarter of the "},
    {75, 99, "last quarter of the "},
});
constexpr auto kPartsBefore = std::to_array<PartSpelling>({
    {"early", kEarly},
    {"beginning of", kEarly},
    {"start of", kEarly},
    {"mid", kMiddle},
    {"middle of", kMiddle},
    {"late", kLate},
    {"end of", kLate},
    {"first half of", kSpans[0]},
    {"1st half of", kSpans[0]},
    {"second half of", kSpans[1]},
    {"2nd half of", kSpans[1]},
    {"first quarter of", kSpans[2]},
    {"1st quarter of", kSpans[2]},
    {"second quarter of", kSpans[3]},
    {"2nd quarter of", kSpans[3]},
    {"third quarter of", kSpans[4]},
    {"3rd quarter of", kSpans[4]},
    {"last quarter of", kSpans[5]},
    {"fourth quarter of", kSpans[5]},
    {"4th quarter of", kSpans[5]},
});
// The Latin of manuscript catalogues: ineunte, medio, exeunte.
constexpr auto kPartsBehind = std::to_array<PartSpelling>({
    {"in", kEarly},
    {"ineunte", kEarly},
    {"med", kMiddle},
    {"medio", kMiddle},
    {"ex", kLate},
    {"exeunte", kLate},
});

constexpr auto kCenturyBehind =
    std::to_array<string_view>({"century", "centuries", "cent", "c", "jahrhundert", "jahrhunderts",
                                "jh", "jhd", "jhdt", "siecle", "s", "secolo", "siglo", "eeuw"});
constexpr auto kCenturyBefore =
    std::to_array<string_view>({"s", "saec", "saeculo", "saeculum", "sec", "siglo", "secolo"});

constexpr auto kAbout = std::to_array<string_view>(
    {"ca", "c", "cca", "circa", "about", "around", "approx", "approximately", "roughly", "near",
     "um", "etwa", "ungefahr", "vers", "environ", "+/-"});
constexpr auto kPerhaps = std::to_array<string_view>(
    {"probably", "prob", "perhaps", "possibly", "maybe", "vermutlich", "wohl", "peut-etre"});
constexpr auto kEra = std::to_array<string_view>(
    {"anno domini", "anno christi", "anno salutis", "anno dni", "anno",
     "an",          "a.d",          "ad",           "a",        "im jahre",
     "im jahr",     "jm jahr",      "in the year",  "the year", "l'an",
     "en l'an",     "printed",      "printed in",   "gedruckt", "dated",
     "ce",          "c.e",          "(c)"});
constexpr auto kBeforeChrist =
    std::to_array<string_view>({"bc", "b.c", "bce", "b.c.e", "v. chr", "v.chr"});
constexpr auto kNotBefore =
    std::to_array<string_view>({"not before", "not earlier than", "no earlier than"});
constexpr auto kNotAfter =
    std::to_array<string_view>({"not after", "not later than", "no later than", "by"});
constexpr auto kBefore = std::to_array<string_view>({"before", "ante", "vor", "avant"});
constexpr auto kAfter = std::to_array<string_view>({"after", "post", "nach", "apres"});
constexpr auto kUntil = std::to_array<string_view>({"until", "up to", "bis", "to"});
constexpr auto kFrom = std::to_array<string_view>({"from", "von"});
constexpr auto kBetween = std::to_array<string_view>({"between", "zwischen"});

std::span<const string_view> wordsOf(DatePhrase phrase) {
    switch (phrase) {
    case DatePhrase::about:
        return kAbout;
    case DatePhrase::perhaps:
        return kPerhaps;
    case DatePhrase::era:
        return kEra;
    case DatePhrase::beforeChrist:
        return kBeforeChrist;
    case DatePhrase::notBefore:
        return kNotBefore;
    case DatePhrase::notAfter:
        return kNotAfter;
    case DatePhrase::before:
        return kBefore;
    case DatePhrase::after:
        return kAfter;
    case DatePhrase::until:
        return kUntil;
    case DatePhrase::from:
        return kFrom;
    case DatePhrase::between:
        break;
    }
    return kBetween;
}

constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

// Bytes of the word at the head, with the point and blanks behind it; 0 where it is not a whole
// word there. A figure may follow without a blank: "c1590", "ca.1590".
std::size_t wordAtHead(string_view text, string_view word) {
    if (!text.starts_with(word) || text.size() == word.size()) {
        return 0;
    }
    std::size_t at = word.size();
    const bool pointed = text[at] == '.';
    at += pointed ? 1 : 0;
    const std::size_t blanks = std::min(text.find_first_not_of(" -", at), text.size()) - at;
    at += blanks;
    const bool ends = blanks > 0 || pointed || (at < text.size() && isDigit(text[at]));
    return ends && at < text.size() ? at : 0;
}

// Where the word begins at the end of the text, with the blanks before it; npos where it doesn't.
std::size_t wordAtEnd(string_view text, string_view word) {
    if (text.ends_with('.')) {
        text.remove_suffix(1);
    }
    if (!text.ends_with(word) || text.size() == word.size()) {
        return string_view::npos;
    }
    const string_view before = text.substr(0, text.size() - word.size());
    const std::size_t last = before.find_last_not_of(" -");
    const bool begins = before.ends_with(' ') || before.ends_with('-') || before.ends_with('.');
    return begins && last != string_view::npos ? last + 1 : string_view::npos;
}

bool takeHead(std::string& text, std::span<const string_view> words) {
    std::size_t longest = 0;
    for (const string_view word : words) {
        longest = std::max(longest, wordAtHead(text, word));
    }
    text.erase(0, longest);
    return longest > 0;
}

bool takeEnd(std::string& text, std::span<const string_view> words) {
    std::size_t first = string_view::npos;
    for (const string_view word : words) {
        first = std::min(first, wordAtEnd(text, word));
    }
    if (first == string_view::npos) {
        return false;
    }
    text.erase(first);
    return true;
}

} // namespace

std::optional<CenturyPart> takeCenturyPart(std::string& text) {
    for (const PartSpelling& spelling : kPartsBefore) {
        if (const std::size_t length = wordAtHead(text, spelling.text); length > 0) {
            text.erase(0, length);
            text.erase(0, text.starts_with("the ") ? 4 : 0);
            return spelling.part;
        }
    }
    for (const PartSpelling& spelling : kPartsBehind) {
        if (const std::size_t at = wordAtEnd(text, spelling.text); at != string_view::npos) {
            text.erase(at);
            return spelling.part;
        }
    }
    return std::nullopt;
}

std::optional<CenturyPart> centuryPartOf(int first, int last) {
    for (const CenturyPart& part : {kEarly, kMiddle, kLate}) {
        if (part.first == first && part.last == last) {
            return part;
        }
    }
    const auto known = std::ranges::find_if(
        kSpans, [&](const CenturyPart& part) { return part.first == first && part.last == last; });
    return known == kSpans.end() ? std::nullopt : std::optional(*known);
}

bool takeCenturyWord(std::string& text) {
    return takeEnd(text, kCenturyBehind) || takeHead(text, kCenturyBefore);
}

bool takeAtHead(std::string& text, DatePhrase phrase) {
    return takeHead(text, wordsOf(phrase));
}
bool takeAtEnd(std::string& text, DatePhrase phrase) {
    // One letter behind a date is more likely "c." for century.
    std::string left = text;
    const std::size_t whole = text.size() - (text.ends_with('.') ? 1 : 0);
    const bool isWord = takeEnd(left, wordsOf(phrase)) && whole - left.size() > 2;
    text = isWord ? left : text;
    return isWord;
}

} // namespace headcap::core
