#include "core/values/book_date.h"

#include <algorithm>
#include <array>
#include <vector>

#include "core/values/book_date_words.h"
#include "core/values/edtf.h"
#include "core/values/fold.h"
#include "core/values/number_scan.h"
#include "core/values/roman.h"

namespace headcap::core {
namespace {

using std::string_view;
using MaybeDate = std::optional<EdtfDate>;
using MaybeEdtf = std::optional<Edtf>;

constexpr char kDash = '_'; // stands for a dash that was longer than a hyphen

constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
bool allDigits(string_view text) {
    return std::ranges::all_of(text, isDigit) && !text.empty();
}

std::optional<int> number(string_view text) {
    if (!allDigits(text) || text.size() > 4) {
        return std::nullopt;
    }
    int value = 0;
    for (const char c : text) {
        value = value * 10 + (c - '0');
    }
    return value;
}

std::string tidy(string_view text) {
    std::string out;
    for (const char c : trimmed(text)) {
        if (c != ' ' || !out.ends_with(' ')) {
            out += c;
        }
    }
    while (out.ends_with(',') || out.ends_with(';') || out.ends_with(' ')) {
        out.pop_back();
    }
    return out;
}

std::string replaced(std::string text, string_view what, string_view by) {
    for (std::size_t at = text.find(what); at != std::string::npos;
         at = text.find(what, at + by.size())) {
        text.replace(at, what.size(), by);
    }
    return text;
}

// Folded, blanks single, dashes and the reversed C as single bytes, brackets gone: what a
// cataloguer supplies is the date all the same.
std::string plainText(string_view typed) {
    std::string text(typed);
    for (const string_view dash : {"\u2013", "\u2014", "\u2012"}) {
        text = replaced(std::move(text), dash, string_view(&kDash, 1));
    }
    for (const string_view reversed : {"\u0186", "\u0254", "\u2183", "\u2184"}) {
        text = replaced(std::move(text), reversed, ")");
    }
    text = replaced(foldForSearch(text), "(?)", "?");
    for (const string_view correction : {"i.e.", "i. e.", "recte"}) {
        if (const std::size_t at = text.find(correction); at != std::string::npos) {
            text.erase(0, at + correction.size());
        }
    }
    std::erase_if(text, [](char c) { return c == '[' || c == ']'; });
    text = tidy(replaced(std::move(text), " ?", "?"));
    if (text.ends_with('.') && text.size() > 1 && isDigit(text[text.size() - 2])) {
        text.pop_back();
    }
    return text;
}

char joined(char a, char b) {
    if (a == '\0' || a == b) {
        return b;
    }
    return b == '\0' ? a : '%';
}

MaybeDate ofYear(std::int64_t year, int unspecified = 0) {
    EdtfDate date;
    date.year = year;
    date.unspecifiedDigits = unspecified;
    return date;
}

// "1612", "165-", "16--", "16xx", "16??".
MaybeDate yearWithGaps(string_view text) {
    if (text.size() != 4 || !isDigit(text[0])) {
        return std::nullopt;
    }
    std::int64_t year = 0;
    int gaps = 0;
    for (const char c : text) {
        const bool isGap = c == '-' || c == kDash || c == 'x' || c == '?' || c == '.';
        if ((!isGap && !isDigit(c)) || (!isGap && gaps > 0)) {
            return std::nullopt;
        }
        gaps += isGap ? 1 : 0;
        year = year * 10 + (isGap ? 0 : c - '0');
    }
    return gaps <= 2 ? ofYear(year, gaps) : std::nullopt;
}

// "1590s", "1590's", "1590er"; the 1600s are a century.
MaybeDate decade(string_view text) {
    for (const string_view ending : {"er jahre", "'s", "s", "er"}) {
        const auto year = text.ends_with(ending)
                              ? number(text.substr(0, text.size() - ending.size()))
                              : std::nullopt;
        if (year && text.size() == 4 + ending.size() && *year % 10 == 0) {
            return ofYear(*year, *year % 100 == 0 ? 2 : 1);
        }
    }
    return std::nullopt;
}

MaybeDate romanYear(string_view text) {
    static constexpr int kFirst = 1000; // below, a few letters too many would be a date
    static constexpr int kLast = 2999;
    const auto year = romanNumber(text);
    return year && *year >= kFirst && *year <= kLast ? ofYear(*year) : std::nullopt;
}

MaybeDate century(std::string text) {
    if (!takeCenturyWord(text)) {
        return std::nullopt;
    }
    text.erase(0, text.starts_with("the ") ? 4 : 0);
    const auto count = ordinal(text);
    return count ? ofYear((*count - 1) * 100, 2) : std::nullopt;
}

std::vector<std::string> wordsOf(string_view text) {
    std::vector<std::string> words;
    std::string word;
    for (const char c : text) {
        if (c == ' ' || c == ',') {
            if (!word.empty()) {
                words.push_back(std::move(word));
            }
            word.clear();
        } else {
            word += c;
        }
    }
    if (!word.empty()) {
        words.push_back(std::move(word));
    }
    std::erase_if(words,
                  [](const std::string& w) { return w == "of" || w == "the" || w == "die"; });
    return words;
}

std::optional<int> dayNumber(const std::string& word) {
    const auto bare = number(word);
    const auto day = bare && word.size() <= 2       ? bare
                     : allDigits(word.substr(0, 1)) ? ordinal(word)
                                                    : std::nullopt;
    return day && *day >= 1 && *day <= 31 ? day : std::nullopt;
}

// "12 March 1612", "March 12, 1612", "March 1612", "Winter, 1612", "12.3.1612".
MaybeDate dayAndMonth(string_view text) {
    std::vector<std::string> words = wordsOf(text);
    if (words.size() == 1 && std::ranges::count(words[0], '.') == 2) {
        words = wordsOf(replaced(words[0], ".", " "));
        const auto month = words.size() == 3 ? number(words[1]) : std::nullopt;
        if (!month || words[1].size() > 2 || *month < 1 || *month > 12) {
            return std::nullopt;
        }
        words[1] = foldForSearch(monthName(*month));
    }
    if (words.size() < 2 || words.size() > 3) {
        return std::nullopt;
    }
    EdtfDate date;
    for (const std::string& word : words) {
        const auto year = word.size() == 4 ? number(word) : std::nullopt;
        if (const auto month = monthOrSeason(word); month && date.month == 0) {
            date.month = *month;
        } else if (year && date.year == 0) {
            date.year = *year;
        } else if (const auto day = dayNumber(word); day && date.day == 0) {
            date.day = *day;
        } else if (const auto roman = romanYear(word); roman && date.year == 0) {
            date.year = roman->year;
        } else {
            return std::nullopt;
        }
    }
    const bool whole = date.year > 0 && date.month > 0 && (date.day > 0 || words.size() == 2);
    return whole && isSound({EdtfKind::date, {{{EdtfEndKind::date, date}, std::nullopt}}})
               ? MaybeDate(date)
               : std::nullopt;
}

MaybeDate edtfDate(string_view text) {
    std::string letters(text);
    std::ranges::replace(letters, 'x', 'X');
    std::ranges::replace(letters, 'y', 'Y');
    std::ranges::replace(letters, 't', 'T');
    std::ranges::replace(letters, 'z', 'Z');
    const auto edtf = parseEdtf(letters);
    return edtf && edtf->kind == EdtfKind::date ? MaybeDate(edtf->members[0].first.date)
                                                : std::nullopt;
}

// One date with what stands around it.
MaybeDate point(std::string text) {
    char qualifier = '\0';
    for (bool found = true; found;) {
        found = false;
        if (takeAtHead(text, DatePhrase::about) || takeAtEnd(text, DatePhrase::about)) {
            qualifier = joined(qualifier, '~');
            found = true;
        }
        if (takeAtHead(text, DatePhrase::perhaps)) {
            qualifier = joined(qualifier, '?');
            found = true;
        }
        found = takeAtHead(text, DatePhrase::era) || takeAtEnd(text, DatePhrase::era) || found;
        if (text.ends_with('?') && !yearWithGaps(text)) {
            text = tidy(text.substr(0, text.size() - 1));
            qualifier = joined(qualifier, '?');
            found = true;
        }
    }
    MaybeDate date = yearWithGaps(text);
    for (const auto reader : {+[](const std::string& t) { return edtfDate(t); },
                              +[](const std::string& t) { return decade(t); },
                              +[](const std::string& t) { return romanYear(t); },
                              +[](const std::string& t) { return century(t); },
                              +[](const std::string& t) { return dayAndMonth(t); }}) {
        date = date ? date : reader(text);
    }
    if (date) {
        date->qualifier = joined(date->qualifier, qualifier);
    }
    return date;
}

EdtfEnd endAt(const EdtfDate& date) {
    return {EdtfEndKind::date, date};
}

MaybeEdtf sound(Edtf edtf) {
    return isSound(edtf) ? MaybeEdtf(std::move(edtf)) : std::nullopt;
}

MaybeEdtf rangeOf(EdtfKind kind, EdtfEnd first, EdtfEnd last) {
    return sound({kind, {{std::move(first), std::move(last)}}});
}

// "early 16th century": one of the years about there.
MaybeEdtf partOfCentury(std::string text) {
    const auto part = takeCenturyPart(text);
    const MaybeDate hundred = part ? century(text) : std::nullopt;
    if (!hundred) {
        return std::nullopt;
    }
    MaybeDate first = ofYear(hundred->year + part->first);
    MaybeDate last = ofYear(hundred->year + part->last);
    first->qualifier = '~';
    last->qualifier = '~';
    return rangeOf(EdtfKind::oneOf, endAt(*first), endAt(*last));
}

// "41" after "1702" is 1741.
MaybeDate shortYear(const EdtfDate& first, string_view text) {
    char qualifier = '\0';
    if (text.ends_with('?')) {
        text.remove_suffix(1);
        qualifier = '?';
    }
    const auto end = number(text);
    if (!end || text.size() > 3 || first.month != 0 || first.unspecifiedDigits != 0) {
        return std::nullopt;
    }
    const std::int64_t span = powerOfTen(static_cast<int>(text.size()));
    MaybeDate last = ofYear(first.year - first.year % span + *end);
    last->qualifier = qualifier;
    return last->year > first.year ? last : std::nullopt;
}

struct TwoDates {
    EdtfDate first;
    EdtfDate last;
    bool wasShort = false; // the second was written in part
};

// Both dates of "1702 - 41", "16th-17th century", "March to May 1612": each may lean on the other.
std::optional<TwoDates> bothDates(const std::string& left, const std::string& right) {
    MaybeDate first = point(left);
    MaybeDate last;
    bool wasShort = false;
    if (first && first->isSeason() && left.find(' ') == std::string::npos) {
        first = ofYear(0);
    }
    if (first && (last = shortYear(*first, right))) {
        wasShort = true;
    }
    if (!last) {
        last = point(right);
    }
    if (!last && first && first->unspecifiedDigits == 2) {
        last = point(right + " century");
    }
    if (!first && last && last->unspecifiedDigits == 2) {
        first = point(left + " century");
    }
    const std::vector<std::string> words = wordsOf(right);
    std::string shared;
    for (std::size_t n = words.size(); !first && last && n-- > 1;) {
        shared = ' ' + words[n] + shared;
        first = point(left + shared);
    }
    return first && last ? std::optional(TwoDates{*first, *last, wasShort}) : std::nullopt;
}

// The text cut in two at a mark; every place is tried.
template <class Read>
MaybeEdtf cutAt(const std::string& text, string_view mark, Read read) {
    for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at + 1)) {
        if (MaybeEdtf edtf = read(tidy(text.substr(0, at)), tidy(text.substr(at + mark.size())))) {
            return edtf;
        }
    }
    return std::nullopt;
}

MaybeEdtf openRange(const std::string& left, const std::string& right) {
    const MaybeDate first = point(left);
    const MaybeDate last = point(right);
    if (first && (right.empty() || right == "?")) {
        const EdtfEndKind kind = right.empty() ? EdtfEndKind::open : EdtfEndKind::unknown;
        return rangeOf(EdtfKind::interval, endAt(*first), {kind, {}});
    }
    if (last && (left.empty() || left == "?")) {
        const EdtfEndKind kind = left.empty() ? EdtfEndKind::open : EdtfEndKind::unknown;
        return rangeOf(EdtfKind::interval, {kind, {}}, endAt(*last));
    }
    return std::nullopt;
}

MaybeEdtf interval(std::string text) {
    static_cast<void>(takeAtHead(text, DatePhrase::from));
    std::string rest = text;
    const bool about = takeAtHead(rest, DatePhrase::about);
    for (const string_view mark : {" to ", " until ", " bis ", "_", "-", "/"}) {
        const auto found =
            cutAt(text, mark, [&](const std::string& left, const std::string& right) {
                const auto dates = bothDates(left, right);
                if (!dates) {
                    return openRange(left, right);
                }
                EdtfDate last = dates->last;
                last.qualifier = about ? joined(last.qualifier, '~') : last.qualifier;
                // "1648/9" is one year by two reckonings, not a span.
                const bool dual = mark == "/" && last.year == dates->first.year + 1 &&
                                  dates->first.month == 0 && last.month == 0;
                if (dual && dates->wasShort) {
                    return sound(
                        {EdtfKind::oneOf,
                         {{endAt(dates->first), std::nullopt}, {endAt(last), std::nullopt}}});
                }
                return rangeOf(EdtfKind::interval, endAt(dates->first), endAt(last));
            });
        if (found) {
            return found;
        }
    }
    if (takeAtHead(text, DatePhrase::until)) {
        if (const MaybeDate date = point(text)) {
            return rangeOf(EdtfKind::interval, {EdtfEndKind::open, {}}, endAt(*date));
        }
    }
    return std::nullopt;
}

// "not after 1660", "before 1660", "between 1655 and 1660".
MaybeEdtf bounded(std::string text) {
    const EdtfEnd open{EdtfEndKind::open, {}};
    struct Bound {
        DatePhrase phrase;
        bool isFirst;
        int step; // to the first year that may be
    };
    static constexpr std::array<Bound, 4> kBounds = {{{DatePhrase::notBefore, true, 0},
                                                      {DatePhrase::notAfter, false, 0},
                                                      {DatePhrase::before, false, -1},
                                                      {DatePhrase::after, true, 1}}};
    for (const Bound& bound : kBounds) {
        if (!takeAtHead(text, bound.phrase)) {
            continue;
        }
        MaybeDate date = point(text);
        if (!date || (bound.step != 0 && date->month != 0)) {
            return std::nullopt;
        }
        if (bound.step != 0) {
            date->year = (bound.step < 0 ? firstYear(*date) : lastYear(*date)) + bound.step;
            date->unspecifiedDigits = 0;
        }
        return bound.isFirst ? rangeOf(EdtfKind::oneOf, endAt(*date), open)
                             : rangeOf(EdtfKind::oneOf, open, endAt(*date));
    }
    if (!takeAtHead(text, DatePhrase::between)) {
        return std::nullopt;
    }
    for (const string_view mark : {" and ", " & ", " und ", "_", "-"}) {
        const auto found = cutAt(text, mark, [](const std::string& left, const std::string& right) {
            const auto dates = bothDates(left, right);
            return dates ? rangeOf(EdtfKind::oneOf, endAt(dates->first), endAt(dates->last))
                         : std::nullopt;
        });
        if (found) {
            return found;
        }
    }
    return std::nullopt;
}

// Adds the members of "1651, 1653-1655"; false where one can't be read.
bool addMembers(const std::string& text, std::vector<EdtfMember>& members) {
    std::size_t from = 0;
    while (from <= text.size()) {
        const std::size_t to = std::min(text.find(',', from), text.size());
        const std::string one = tidy(text.substr(from, to - from));
        if (const MaybeDate date = point(one)) {
            members.push_back({endAt(*date), std::nullopt});
        } else if (const MaybeEdtf span = interval(one); span && span->kind == EdtfKind::interval) {
            members.push_back(span->members[0]);
        } else {
            return false;
        }
        from = to + 1;
    }
    return true;
}

// "1655 or 1656", "1651, 1653 and 1655".
MaybeEdtf list(const std::string& text) {
    struct Word {
        string_view text;
        EdtfKind kind;
    };
    static constexpr auto kWords = std::to_array<Word>({{" or ", EdtfKind::oneOf},
                                                        {" oder ", EdtfKind::oneOf},
                                                        {" and ", EdtfKind::allOf},
                                                        {" und ", EdtfKind::allOf},
                                                        {" & ", EdtfKind::allOf},
                                                        {",", EdtfKind::allOf}});
    for (const Word& word : kWords) {
        const auto found =
            cutAt(text, word.text, [&](const std::string& left, const std::string& right) {
                Edtf edtf{word.kind, {}};
                if (addMembers(left, edtf.members)) {
                    const auto& before = edtf.members.back().first.date;
                    const MaybeDate shorter = shortYear(before, right);
                    if (shorter) {
                        edtf.members.push_back({endAt(*shorter), std::nullopt});
                        return sound(edtf);
                    }
                    if (addMembers(right, edtf.members)) {
                        return sound(edtf);
                    }
                }
                const auto dates = bothDates(left, right);
                return dates ? sound({word.kind,
                                      {{endAt(dates->first), std::nullopt},
                                       {endAt(dates->last), std::nullopt}}})
                             : std::nullopt;
            });
        if (found) {
            return found;
        }
    }
    return std::nullopt;
}

MaybeEdtf asTyped(const std::string& text) {
    if (const MaybeDate date = point(text)) {
        return sound({EdtfKind::date, {{endAt(*date), std::nullopt}}});
    }
    for (const auto reader : {+[](const std::string& t) { return partOfCentury(t); },
                              +[](const std::string& t) { return bounded(t); },
                              +[](const std::string& t) { return interval(t); },
                              +[](const std::string& t) { return list(t); }}) {
        if (MaybeEdtf edtf = reader(text)) {
            return edtf;
        }
    }
    return std::nullopt;
}

} // namespace

tl::expected<BookDate, TextError> parseBookDate(string_view text) {
    const string_view body = trimmed(text);
    const std::size_t head = blanksAtHead(text);
    auto edtf = parseEdtf(body);
    if (edtf && edtf->members.size() == 1 && !edtf->members[0].last) {
        edtf->kind = EdtfKind::date; // "[1655]" is a date that a cataloguer supplied
    }
    if (edtf) {
        return BookDate{edtfText(*edtf)};
    }
    const std::string plain = plainText(body);
    if (plain.empty() || saysUndated(plain)) {
        return tl::unexpected(TextError{TextProblem::empty, 0});
    }
    if (const MaybeEdtf typed = asTyped(plain)) {
        return BookDate{edtfText(*typed)};
    }
    // Where the text was meant for EDTF, its reader knows the place.
    const bool isFormal = body.find_first_not_of("0123456789X-/?~%.,Y[]{}") == string_view::npos;
    return tl::unexpected(isFormal ? TextError{edtf.error().problem, head + edtf.error().at}
                                   : TextError{TextProblem::malformed, head});
}

} // namespace headcap::core
