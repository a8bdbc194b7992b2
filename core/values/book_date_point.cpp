#include "core/values/book_date_point.h"

#include <algorithm>

#include "core/values/book_date_words.h"
#include "core/values/fold.h"
#include "core/values/roman.h"

namespace headcap::core {
namespace {

using std::string_view;
using MaybeDate = std::optional<EdtfDate>;

constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

// "165-", "16--", "16xx", "16??".
MaybeDate yearWithGaps(string_view text) {
    if (text.size() != 4 || !isDigit(text[0])) {
        return std::nullopt;
    }
    std::int64_t year = 0;
    int gaps = 0;
    for (const char c : text) {
        const bool isGap = c == '-' || c == kLongDash || c == 'x' || c == '?' || c == '.';
        if ((!isGap && !isDigit(c)) || (!isGap && gaps > 0)) {
            return std::nullopt;
        }
        gaps += isGap ? 1 : 0;
        year = year * 10 + (isGap ? 0 : c - '0');
    }
    return gaps <= 2 ? MaybeDate(dateOfYear(year, gaps)) : std::nullopt;
}

// "1590s", "1590's", "1590er"; the 1600s are a century.
MaybeDate decade(const std::string& text) {
    for (const string_view ending : {"er jahre", "'s", "s", "er"}) {
        if (!text.ends_with(ending) || text.size() != 4 + ending.size()) {
            continue;
        }
        const auto year = plainNumber(string_view(text).substr(0, 4));
        if (year && *year % 10 == 0) {
            return dateOfYear(*year, *year % 100 == 0 ? 2 : 1);
        }
    }
    return std::nullopt;
}

MaybeDate romanYear(const std::string& text) {
    static constexpr int kFirst = 1000; // below, a few letters too many would be a date
    static constexpr int kLast = 2999;
    const auto year = romanNumber(text);
    return year && *year >= kFirst && *year <= kLast ? MaybeDate(dateOfYear(*year)) : std::nullopt;
}

std::optional<int> dayNumber(const std::string& word) {
    const auto bare = plainNumber(word);
    const bool isShort = bare && word.size() <= 2;
    const auto day = isShort || word.empty() || !isDigit(word[0]) ? bare : ordinal(word);
    return day && *day >= 1 && *day <= 31 ? day : std::nullopt;
}

// "1612", "MDCXII", and in the months when the two reckonings differ "1648/9", which is 1649.
std::optional<std::int64_t> yearBesideMonth(const std::string& word, int month) {
    if (const auto year = plainNumber(word); year && word.size() == 4) {
        return *year;
    }
    if (const auto roman = romanYear(word)) {
        return roman->year;
    }
    const std::size_t bar = word.find('/');
    const auto old = plainNumber(string_view(word).substr(0, bar));
    const auto digits = bar == std::string::npos ? std::string() : word.substr(bar + 1);
    if (bar != 4 || !old || digits.empty() || month < 1 || month > 3) {
        return std::nullopt;
    }
    const std::string next = std::to_string(*old + 1);
    return next.ends_with(digits) ? std::optional<std::int64_t>(*old + 1) : std::nullopt;
}

// "12 March 1612", "March 12, 1612", "March 1612", "Winter, 1612", "12.3.1612".
MaybeDate dayAndMonth(const std::string& text) {
    std::vector<std::string> words = dateWords(text);
    if (words.size() == 1 && std::ranges::count(words[0], '.') == 2) {
        words = dateWords(replacedIn(words[0], ".", " "));
        const auto month = words.size() == 3 ? plainNumber(words[1]) : std::nullopt;
        if (!month || words[1].size() > 2 || *month < 1 || *month > 12) {
            return std::nullopt;
        }
        words[1] = foldForSearch(monthName(*month));
    }
    if (words.size() < 2 || words.size() > 3) {
        return std::nullopt;
    }
    EdtfDate date;
    const auto named = std::ranges::find_if(
        words, [](const std::string& word) { return monthOrSeason(word).has_value(); });
    if (named == words.end()) {
        return std::nullopt;
    }
    date.month = *monthOrSeason(*named);
    words.erase(named);
    for (const std::string& word : words) {
        if (const auto year = yearBesideMonth(word, date.month); year && date.year == 0) {
            date.year = *year;
        } else if (const auto day = dayNumber(word); day && date.day == 0) {
            date.day = *day;
        } else {
            return std::nullopt;
        }
    }
    return date.year > 0 && isSound({EdtfKind::date, {{{EdtfEndKind::date, date}, std::nullopt}}})
               ? MaybeDate(date)
               : std::nullopt;
}

MaybeDate edtfDate(const std::string& text) {
    std::string letters = text;
    for (char& c : letters) {
        c = c == 'x' || c == 'y' || c == 't' || c == 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    }
    const auto edtf = parseEdtf(letters);
    return edtf && edtf->kind == EdtfKind::date ? MaybeDate(edtf->members[0].first.date)
                                                : std::nullopt;
}

// What stood around a date, taken from it.
struct Surroundings {
    char qualifier = '\0';
    bool hasEra = false; // "A.D. 842" is a year; 842 alone is a slip
    bool isBeforeChrist = false;
};

Surroundings takeSurroundings(std::string& text) {
    Surroundings taken;
    for (bool found = true; found;) {
        found = false;
        if (takeAtHead(text, DatePhrase::about) || takeAtEnd(text, DatePhrase::about)) {
            taken.qualifier = joinedQualifier(taken.qualifier, '~');
            found = true;
        }
        if (takeAtHead(text, DatePhrase::perhaps)) {
            taken.qualifier = joinedQualifier(taken.qualifier, '?');
            found = true;
        }
        if (takeAtHead(text, DatePhrase::era) || takeAtEnd(text, DatePhrase::era)) {
            taken.hasEra = true;
            found = true;
        }
        if (takeAtEnd(text, DatePhrase::beforeChrist)) {
            taken.isBeforeChrist = true;
            found = true;
        }
        if (text.ends_with('?') && (taken.hasEra || !yearWithGaps(text))) {
            text = tidyDate(string_view(text).substr(0, text.size() - 1));
            taken.qualifier = joinedQualifier(taken.qualifier, '?');
            found = true;
        }
    }
    return taken;
}

} // namespace

MaybeDate centuryDate(std::string text) {
    static constexpr string_view kMillennium = " millennium";
    const bool isMillennium = text.ends_with(kMillennium);
    if (isMillennium) {
        text.erase(text.size() - kMillennium.size());
    } else if (!takeCenturyWord(text)) {
        return std::nullopt;
    }
    text.erase(0, text.starts_with("the ") ? 4 : 0);
    const auto bare = text.size() <= 2 ? plainNumber(text) : std::nullopt;
    const auto count = bare ? bare : ordinal(text);
    if (!count || *count < 1 || *count > (isMillennium ? 3 : 21)) {
        return std::nullopt;
    }
    return isMillennium ? dateOfYear((*count - 1) * 1000, 3) : dateOfYear((*count - 1) * 100, 2);
}

MaybeDate datePoint(std::string text) {
    const Surroundings around = takeSurroundings(text);
    MaybeDate date = yearWithGaps(text);
    const auto year = plainNumber(text);
    if (year && *year > 0 && (around.hasEra || around.isBeforeChrist)) {
        date = dateOfYear(around.isBeforeChrist ? 1 - *year : *year);
    } else if (around.isBeforeChrist) {
        return std::nullopt;
    }
    for (const auto reader : {edtfDate, decade, romanYear, dayAndMonth}) {
        date = date ? date : reader(text);
    }
    date = date ? date : centuryDate(text);
    if (date) {
        date->qualifier = joinedQualifier(date->qualifier, around.qualifier);
    }
    return date;
}

} // namespace headcap::core
