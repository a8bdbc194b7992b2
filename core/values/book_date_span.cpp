#include "core/values/book_date_span.h"

#include <array>
#include <vector>

#include "core/values/book_date_words.h"
#include "core/values/number_scan.h"

namespace headcap::core::book_date {
namespace {

using std::string_view;

MaybeEdtf rangeOf(EdtfKind kind, EdtfEnd first, EdtfEnd last) {
    return sound({kind, {{std::move(first), std::move(last)}}});
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

// The two sides of a mark: both dates, or one and an open end.
MaybeEdtf spanOf(const std::string& left, const std::string& right, string_view mark,
                 bool isAbout) {
    const auto dates = bothDates(left, right);
    if (!dates) {
        return openRange(left, right, mark);
    }
    EdtfDate last = dates->last;
    last.qualifier = isAbout ? joinedQualifier(last.qualifier, '~') : last.qualifier;
    // "1648/9" is one year by two reckonings, not a span.
    const bool isDual = mark == "/" && last.year == dates->first.year + 1 &&
                        dates->first.month == 0 && last.month == 0;
    if (isDual && dates->wasShort) {
        return sound(
            {EdtfKind::oneOf, {{endAt(dates->first), std::nullopt}, {endAt(last), std::nullopt}}});
    }
    return rangeOf(EdtfKind::interval, endAt(dates->first), endAt(last));
}

struct Bound {
    DatePhrase phrase;
    bool isFirst;
    int step; // to the first year that may be
};
constexpr std::array<Bound, 4> kBounds = {{{DatePhrase::notBefore, true, 0},
                                           {DatePhrase::notAfter, false, 0},
                                           {DatePhrase::before, false, -1},
                                           {DatePhrase::after, true, 1}}};

MaybeEdtf oneSided(const std::string& text, const Bound& bound) {
    const EdtfEnd open{EdtfEndKind::open, {}};
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

} // namespace

EdtfEnd endAt(const EdtfDate& date) {
    return {EdtfEndKind::date, date};
}

MaybeEdtf sound(Edtf edtf) {
    return isSound(edtf) ? MaybeEdtf(std::move(edtf)) : std::nullopt;
}

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

MaybeEdtf interval(std::string text) {
    static_cast<void>(takeAtHead(text, DatePhrase::from));
    std::string rest = text;
    const bool isAbout = takeAtHead(rest, DatePhrase::about);
    for (const string_view mark : {" to ", " until ", " bis ", "_", "-", "/"}) {
        const auto found =
            cutAt(text, mark, [&](const std::string& left, const std::string& right) {
                return spanOf(left, right, mark, isAbout);
            });
        if (found) {
            return found;
        }
    }
    const bool isUntil = takeAtHead(text, DatePhrase::until);
    const MaybeDate last = isUntil ? datePoint(text) : std::nullopt;
    return last ? rangeOf(EdtfKind::interval, {EdtfEndKind::open, {}}, endAt(*last)) : std::nullopt;
}

MaybeEdtf bounded(std::string text) {
    for (const Bound& bound : kBounds) {
        if (takeAtHead(text, bound.phrase)) {
            return oneSided(text, bound);
        }
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

} // namespace headcap::core::book_date
