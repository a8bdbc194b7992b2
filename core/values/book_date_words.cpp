#include "core/values/book_date_words.h"

#include <algorithm>
#include <array>

#include "core/values/month_names.h"
#include "core/values/roman.h"

namespace headcap::core {
namespace {

using std::string_view;

struct NamedMonth {
    string_view name;
    int number;
};

// Abbreviations of three letters and more are read too, so the stems need not be here.
constexpr auto kMonths = std::to_array<NamedMonth>({
    {"january", 1},    {"januar", 1},    {"januarii", 1},   {"ianuarii", 1},   {"janvier", 1},
    {"february", 2},   {"februar", 2},   {"februarii", 2},  {"fevrier", 2},    {"march", 3},
    {"marz", 3},       {"maerz", 3},     {"martii", 3},     {"mars", 3},       {"april", 4},
    {"aprilis", 4},    {"avril", 4},     {"may", 5},        {"mai", 5},        {"maii", 5},
    {"maij", 5},       {"june", 6},      {"juni", 6},       {"junii", 6},      {"iunii", 6},
    {"juin", 6},       {"july", 7},      {"juli", 7},       {"julii", 7},      {"iulii", 7},
    {"juillet", 7},    {"august", 8},    {"augusti", 8},    {"aout", 8},       {"september", 9},
    {"septembris", 9}, {"septembre", 9}, {"sept", 9},       {"october", 10},   {"oktober", 10},
    {"octobris", 10},  {"octobre", 10},  {"november", 11},  {"novembris", 11}, {"novembre", 11},
    {"december", 12},  {"dezember", 12}, {"decembris", 12}, {"decembre", 12},  {"spring", 21},
    {"summer", 22},    {"autumn", 23},   {"fall", 23},      {"winter", 24},
});

constexpr auto kSeasonNames = std::to_array<string_view>({"spring", "summer", "autumn", "winter"});

constexpr auto kOrdinalWords = std::to_array<string_view>(
    {"first",      "second",     "third",       "fourth",    "fifth",       "sixth",
     "seventh",    "eighth",     "ninth",       "tenth",     "eleventh",    "twelfth",
     "thirteenth", "fourteenth", "fifteenth",   "sixteenth", "seventeenth", "eighteenth",
     "nineteenth", "twentieth",  "twenty-first"});

constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

} // namespace

std::optional<int> monthOrSeason(string_view word) {
    if (word.ends_with('.')) {
        word.remove_suffix(1);
    }
    const auto known = std::ranges::find_if(kMonths, [&](const NamedMonth& month) {
        return month.name == word ||
               (word.size() == 3 && month.number <= 12 && month.name.starts_with(word));
    });
    return known == kMonths.end() ? std::nullopt : std::optional(known->number);
}

string_view monthName(int monthOrSeason) {
    return monthOrSeason <= 12 ? kMonthNames[static_cast<std::size_t>(monthOrSeason - 1)]
                               : kSeasonNames[static_cast<std::size_t>(monthOrSeason - 21)];
}

std::optional<int> ordinal(string_view word) {
    const auto named = std::ranges::find(kOrdinalWords, word);
    if (named != kOrdinalWords.end()) {
        return static_cast<int>(named - kOrdinalWords.begin()) + 1;
    }
    int value = 0;
    std::size_t digits = 0;
    while (digits < word.size() && digits < 2 && isDigit(word[digits])) {
        value = value * 10 + (word[digits] - '0');
        ++digits;
    }
    const string_view ending = word.substr(digits);
    if (digits > 0) {
        const bool ends = ending == "." || ending == "st" || ending == "nd" || ending == "rd" ||
                          ending == "th" || ending == "e" || ending == "eme";
        return ends && value > 0 ? std::optional(value) : std::nullopt;
    }
    for (const string_view suffix : {"eme", "e", "."}) {
        if (word.ends_with(suffix)) {
            word.remove_suffix(suffix.size());
            break;
        }
    }
    const auto roman = romanNumber(word);
    return roman && *roman <= 21 ? std::optional(static_cast<int>(*roman)) : std::nullopt;
}

std::string ordinalText(int number) {
    const bool teens = number % 100 >= 11 && number % 100 <= 13;
    const int last = teens ? 0 : number % 10;
    const string_view ending = last == 1 ? "st" : last == 2 ? "nd" : last == 3 ? "rd" : "th";
    return std::to_string(number) + std::string(ending);
}

bool saysUndated(string_view text) {
    static constexpr auto kUndated = std::to_array<string_view>(
        {"n.d", "nd", "s.a", "s. a", "s.d", "s. d", "o.j", "o. j", "n. d", "undated", "no date",
         "sine anno", "ohne jahr", "unknown", "xxxx", "date unknown"});
    if (text.ends_with('.')) {
        text.remove_suffix(1);
    }
    return std::ranges::find(kUndated, text) != kUndated.end();
}

} // namespace headcap::core
