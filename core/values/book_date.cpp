#include "core/values/book_date.h"

#include <algorithm>
#include <array>
#include <vector>

#include "core/values/book_date_point.h"
#include "core/values/book_date_words.h"
#include "core/values/edtf.h"
#include "core/values/fold.h"
#include "core/values/number_scan.h"

namespace headcap::core {
namespace {

using std::string_view;
using MaybeDate = std::optional<EdtfDate>;
using MaybeEdtf = std::optional<Edtf>;

constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

// Folded, blanks single, dashes and the reversed C as single bytes, brackets gone: what a
// cataloguer supplies is the date all the same.
std::string plainText(string_view typed) {
    std::string text(typed);
    for (const string_view dash : {"\u2013", "\u2014", "\u2012"}) {
        text = replacedIn(std::move(text), dash, string_view(&kLongDash, 1));
    }
    for (const string_view reversed : {"\u0186", "\u0254", "\u2183", "\u2184"}) {
        text = replacedIn(std::move(text), reversed, ")");
    }
    text = replacedIn(foldForSearch(text), "(?)", "?");
    for (const string_view correction : {"i.e.", "i. e.", "recte"}) {
        if (const std::size_t at = text.find(correction); at != std::string::npos) {
            text.erase(0, at + correction.size());
        }
    }
    std::erase_if(text, [](char c) { return c == '[' || c == ']'; });
    text = tidyDate(replacedIn(std::move(text), " ?", "?"));
    if (text.ends_with('.') && text.size() > 1 && isDigit(text[text.size() - 2])) {
        text.pop_back();
    }
    return text;
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
    const MaybeDate hundred = part ? centuryDate(text) : std::nullopt;
    if (!hundred) {
        return std::nullopt;
    }
    EdtfDate first = dateOfYear(hundred->year + part->first);
    EdtfDate last = dateOfYear(hundred->year + part->last);
    first.qualifier = '~';
    last.qualifier = '~';
    return rangeOf(EdtfKind::oneOf, endAt(first), endAt(last));
}

// "41" after "1702" is 1741.
MaybeDate shortYear(const EdtfDate& first, string_view text) {
    char qualifier = '\0';
    if (text.ends_with('?')) {
        text.remove_suffix(1);
        qualifier = '?';
    }
    const auto end = plainNumber(text);
    if (!end || text.size() > 3 || first.month != 0 || first.unspecifiedDigits != 0) {
        return std::nullopt;
    }
    const std::int64_t span = powerOfTen(static_cast<int>(text.size()));
    EdtfDate last = dateOfYear(first.year - first.year % span + *end);
    last.qualifier = qualifier;
    return last.year > first.year ? MaybeDate(last) : std::nullopt;
}

struct TwoDates {
    EdtfDate first;
    EdtfDate last;
    bool wasShort = false; // the second was written in part
};

// Both dates of "1702 - 41", "16th-17th century", "March to May 1612": each may lean on the other.
std::optional<TwoDates> bothDates(const std::string& left, const std::string& right) {
    MaybeDate first = datePoint(left);
    MaybeDate last;
    bool wasShort = false;
    if (first && (last = shortYear(*first, right))) {
        wasShort = true;
    }
    if (!last) {
        last = datePoint(right);
    }
    if (!last && first && first->unspecifiedDigits == 2) {
        last = datePoint(right + " century");
    }
    if (!first && last && last->unspecifiedDigits == 2) {
        first = datePoint(left + " century");
    }
    const std::vector<std::string> words = dateWords(right);
    std::string shared;
    for (std::size_t n = words.size(); !first && last && n-- > 1;) {
        shared = ' ' + words[n] + shared;
        first = datePoint(left + shared);
    }
    return first && last ? std::optional(TwoDates{*first, *last, wasShort}) : std::nullopt;
}

// The text cut in two at a mark; every place is tried.
template <class Read>
MaybeEdtf cutAt(const std::string& text, string_view mark, Read read) {
    for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at + 1)) {
        if (MaybeEdtf edtf =
                read(tidyDate(text.substr(0, at)), tidyDate(text.substr(at + mark.size())))) {
            return edtf;
        }
    }
    return std::nullopt;
}

// "1600-", "1600 - ?", "? - 1600". A year behind a lone hyphen would be one before Christ.
MaybeEdtf openRange(const std::string& left, const std::string& right, string_view mark) {
    const MaybeDate first = datePoint(left);
    const MaybeDate last = datePoint(right);
    if (first && (right.empty() || right == "?")) {
        const EdtfEndKind kind = right.empty() ? EdtfEndKind::open : EdtfEndKind::unknown;
        return rangeOf(EdtfKind::interval, endAt(*first), {kind, {}});
    }
    if (last && (left == "?" || (left.empty() && mark != "-"))) {
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
                    return openRange(left, right, mark);
                }
                EdtfDate last = dates->last;
                last.qualifier = about ? joinedQualifier(last.qualifier, '~') : last.qualifier;
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
        if (const MaybeDate date = datePoint(text)) {
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
        MaybeDate date = datePoint(text);
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

// The members of "1651, 1653-1655, 57"; nothing where one can't be read.
std::optional<std::vector<EdtfMember>> members(const std::string& text) {
    std::vector<EdtfMember> read;
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t to = std::min(text.find(',', from), text.size());
        const std::string one = tidyDate(string_view(text).substr(from, to - from));
        const MaybeDate shorter =
            read.empty() ? std::nullopt : shortYear(read.back().first.date, one);
        if (const MaybeDate date = shorter ? shorter : datePoint(one)) {
            read.push_back({endAt(*date), std::nullopt});
        } else if (const MaybeEdtf span = interval(one); span && span->kind == EdtfKind::interval) {
            read.push_back(span->members[0]);
        } else {
            return std::nullopt;
        }
        from = to + 1;
    }
    return read;
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
    const auto word = std::ranges::find_if(
        kWords, [&](const Word& w) { return text.find(w.text) != std::string::npos; });
    if (word == kWords.end()) {
        return std::nullopt;
    }
    if (const auto all = members(replacedIn(text, word->text, ","))) {
        return sound({word->kind, *all});
    }
    return cutAt(text, word->text, [&](const std::string& left, const std::string& right) {
        const auto dates = bothDates(left, right);
        return dates ? sound({word->kind,
                              {{endAt(dates->first), std::nullopt},
                               {endAt(dates->last), std::nullopt}}})
                     : std::nullopt;
    });
}

MaybeEdtf asTyped(const std::string& text) {
    if (const MaybeDate date = datePoint(text)) {
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
    if (std::ranges::count(body, '[') != std::ranges::count(body, ']')) {
        return tl::unexpected(TextError{TextProblem::malformed, head + body.find_first_of("[]")});
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
