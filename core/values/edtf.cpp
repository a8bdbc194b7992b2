#include "core/values/edtf.h"

#include <algorithm>
#include <chrono>
#include <tuple>

namespace headcap::core {
namespace {

constexpr std::int64_t kLargestYear = 1'000'000'000'000'000;

constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
constexpr bool isQualifier(char c) {
    return c == '?' || c == '~' || c == '%';
}

// What is left of a text, and where in the whole it begins.
class Cursor {
public:
    Cursor(std::string_view text, std::size_t at) : m_text(text), m_at(at) {}

    [[nodiscard]] std::string_view rest() const { return m_text; }
    [[nodiscard]] std::size_t at() const { return m_at; }
    [[nodiscard]] bool atEnd() const { return m_text.empty(); }
    void skip(std::size_t n) {
        m_text.remove_prefix(n);
        m_at += n;
    }
    bool take(std::string_view mark) {
        const bool found = m_text.starts_with(mark);
        skip(found ? mark.size() : 0);
        return found;
    }
    std::optional<int> twoDigits() {
        if (m_text.size() < 2 || !isDigit(m_text[0]) || !isDigit(m_text[1])) {
            return std::nullopt;
        }
        const int value = (m_text[0] - '0') * 10 + (m_text[1] - '0');
        skip(2);
        return value;
    }
    [[nodiscard]] tl::unexpected<TextError> error(TextProblem problem) const {
        return tl::unexpected(TextError{problem, m_at});
    }

private:
    std::string_view m_text;
    std::size_t m_at;
};

// "Y170000002": more than four digits, and that is all of the date.
tl::expected<EdtfDate, TextError> readLongYear(Cursor& in) {
    EdtfDate date;
    const bool negative = in.take("-");
    std::size_t digits = 0;
    while (digits < in.rest().size() && isDigit(in.rest()[digits])) {
        ++digits;
    }
    if (digits < 5 || in.rest().starts_with('0')) {
        return in.error(TextProblem::malformed);
    }
    for (const char c : in.rest().substr(0, digits)) {
        date.year = date.year * 10 + (c - '0');
        if (date.year > kLargestYear) {
            return in.error(TextProblem::tooLarge);
        }
    }
    in.skip(digits);
    date.year = negative ? -date.year : date.year;
    return date;
}

// "1612", "161X", "16XX", "1XXX", "-0044".
tl::expected<EdtfDate, TextError> readYear(Cursor& in) {
    EdtfDate date;
    const Cursor start = in;
    const bool negative = in.take("-");
    if (in.rest().size() < 4) {
        return in.error(TextProblem::malformed);
    }
    for (const char c : in.rest().substr(0, 4)) {
        const bool unspecified = c == 'X';
        if (!unspecified && (!isDigit(c) || date.unspecifiedDigits > 0)) {
            return in.error(TextProblem::notANumber);
        }
        date.unspecifiedDigits += unspecified ? 1 : 0;
        date.year = date.year * 10 + (unspecified ? 0 : c - '0');
    }
    in.skip(4);
    if (negative && date.year == 0) {
        return start.error(TextProblem::outOfRange);
    }
    date.year = negative ? -date.year : date.year;
    return date;
}

// "T23:20:30", "T23:20:30Z", "T23:20:30-04", "T23:20:30+04:30".
bool readTime(Cursor& in) {
    in.take("T");
    const auto hour = in.twoDigits();
    const bool first = in.take(":");
    const auto minute = in.twoDigits();
    const bool second = in.take(":");
    const auto seconds = in.twoDigits();
    if (!hour || !first || !minute || !second || !seconds || *minute > 59 || *seconds > 59) {
        return false;
    }
    if (*hour > 24 || (*hour == 24 && (*minute > 0 || *seconds > 0))) {
        return false;
    }
    if (in.take(".")) {
        std::size_t digits = 0;
        while (digits < in.rest().size() && isDigit(in.rest()[digits])) {
            ++digits;
        }
        if (digits == 0) {
            return false;
        }
        in.skip(digits);
    }
    if (in.take("Z")) {
        return true;
    }
    const bool west = in.take("-");
    if (!west && !in.take("+")) {
        return true;
    }
    const auto offsetHour = in.twoDigits();
    const bool hasMinutes = in.take(":");
    const auto offsetMinute = hasMinutes ? in.twoDigits() : std::optional(0);
    if (!offsetHour || !offsetMinute || *offsetMinute > 59) {
        return false;
    }
    const int offset = *offsetHour * 60 + *offsetMinute;
    return west ? offset > 0 && offset <= 12 * 60 : offset <= 14 * 60;
}

std::optional<int> twoDigitsOrUnspecified(Cursor& in) {
    return in.take("XX") ? std::optional(EdtfDate::kUnspecified) : in.twoDigits();
}

bool isSoundDay(const EdtfDate& date) {
    namespace chrono = std::chrono;
    if (date.day == 0) {
        return true;
    }
    if (date.month == EdtfDate::kUnspecified || date.unspecifiedDigits > 0) {
        return date.day == EdtfDate::kUnspecified;
    }
    if (date.isSeason() || date.month == 0) {
        return false;
    }
    return date.day == EdtfDate::kUnspecified ||
           chrono::year_month_day{chrono::year{static_cast<int>(date.year)},
                                  chrono::month{static_cast<unsigned>(date.month)},
                                  chrono::day{static_cast<unsigned>(date.day)}}
               .ok();
}

bool isSoundDate(const EdtfDate& date) {
    const bool monthIsRead = date.month == EdtfDate::kUnspecified || date.month == 0 ||
                             (date.month >= 1 && date.month <= 12) ||
                             (date.month >= 21 && date.month <= 24);
    const bool yearAllows =
        date.month == 0 || date.month == EdtfDate::kUnspecified || date.unspecifiedDigits == 0;
    return monthIsRead && yearAllows && isSoundDay(date);
}

tl::expected<EdtfDate, TextError> readDate(Cursor& in) {
    const Cursor start = in;
    const bool isLong = in.take("Y");
    auto date = isLong ? readLongYear(in) : readYear(in);
    if (!date) {
        return date;
    }
    if (!isLong && in.take("-")) {
        const auto month = twoDigitsOrUnspecified(in);
        if (!month || *month == 0) {
            return in.error(month ? TextProblem::outOfRange : TextProblem::malformed);
        }
        date->month = *month;
        if (in.take("-")) {
            const auto day = twoDigitsOrUnspecified(in);
            if (!day || *day == 0) {
                return in.error(day ? TextProblem::outOfRange : TextProblem::malformed);
            }
            date->day = *day;
        }
    }
    if (!isSoundDate(*date)) {
        return start.error(TextProblem::outOfRange);
    }
    if (date->day > 0 && in.rest().starts_with('T')) {
        const Cursor time = in;
        if (!readTime(in)) {
            return in.error(TextProblem::malformed);
        }
        date->time = std::string(time.rest().substr(0, in.at() - time.at()));
    } else if (!in.atEnd() && isQualifier(in.rest()[0])) {
        date->qualifier = in.rest()[0];
        in.skip(1);
    }
    return date;
}

// Enough to compare two ends: year, month, day, of the first or the last day it may be.
using Bound = std::tuple<std::int64_t, int, int>;

Bound earliest(const EdtfDate& date) {
    const int month = date.month > 0 && !date.isSeason() ? date.month : 1;
    return {firstYear(date), month, std::max(date.day, 1)};
}

Bound latest(const EdtfDate& date) {
    const int month = date.month > 0 && !date.isSeason() ? date.month : 12;
    return {lastYear(date), month, date.day > 0 ? date.day : 31};
}

bool isInOrder(const EdtfMember& member) {
    if (!member.last) {
        return member.first.kind == EdtfEndKind::date;
    }
    const bool bothDates =
        member.first.kind == EdtfEndKind::date && member.last->kind == EdtfEndKind::date;
    const bool neither =
        member.first.kind != EdtfEndKind::date && member.last->kind != EdtfEndKind::date;
    return bothDates ? earliest(member.first.date) <= latest(member.last->date) : !neither;
}

bool isSoundMember(const EdtfMember& member, EdtfKind kind) {
    const auto endIsSound = [&](const EdtfEnd& end) {
        return end.kind != EdtfEndKind::date ||
               (isSoundDate(end.date) && (kind == EdtfKind::date || end.date.time.empty()));
    };
    // A season has no first and last day that all agree on, so it can't end an interval.
    const bool hasSeason =
        member.first.date.isSeason() || (member.last && member.last->date.isSeason());
    return endIsSound(member.first) && (!member.last || endIsSound(*member.last)) &&
           !(member.last && hasSeason) && isInOrder(member);
}

tl::expected<EdtfEnd, TextError> readEnd(Cursor& in) {
    if (in.take("..")) {
        return EdtfEnd{EdtfEndKind::open, {}};
    }
    if (in.atEnd() || in.rest().starts_with('/')) {
        return EdtfEnd{EdtfEndKind::unknown, {}};
    }
    return readDate(in).map([](EdtfDate date) { return EdtfEnd{EdtfEndKind::date, date}; });
}

tl::expected<EdtfMember, TextError> readSetMember(Cursor& in) {
    EdtfMember member;
    if (in.take("..")) {
        member.first.kind = EdtfEndKind::open;
        member.last.emplace();
    } else {
        auto date = readDate(in);
        if (!date) {
            return tl::unexpected(date.error());
        }
        member.first.date = *date;
        if (!in.take("..")) {
            return member;
        }
        member.last.emplace();
        if (in.rest().starts_with(',') || in.rest().starts_with(']') ||
            in.rest().starts_with('}')) {
            member.last->kind = EdtfEndKind::open;
            return member;
        }
    }
    auto date = readDate(in);
    if (!date) {
        return tl::unexpected(date.error());
    }
    member.last->date = *date;
    return member;
}

tl::expected<Edtf, TextError> readSet(Cursor& in) {
    const bool oneOf = in.take("[");
    if (!oneOf) {
        in.take("{");
    }
    const std::string_view close = oneOf ? "]" : "}";
    Edtf set{oneOf ? EdtfKind::oneOf : EdtfKind::allOf, {}};
    do {
        in.take(set.members.empty() ? "" : " ");
        auto member = readSetMember(in);
        if (!member) {
            return tl::unexpected(member.error());
        }
        set.members.push_back(*member);
    } while (in.take(","));
    if (!in.take(close)) {
        return in.error(TextProblem::malformed);
    }
    return set;
}

tl::expected<Edtf, TextError> readDateOrInterval(Cursor& in) {
    auto first = readEnd(in);
    if (!first) {
        return tl::unexpected(first.error());
    }
    Edtf edtf{EdtfKind::date, {{*first, std::nullopt}}};
    if (in.take("/")) {
        auto last = readEnd(in);
        if (!last) {
            return tl::unexpected(last.error());
        }
        edtf.kind = EdtfKind::interval;
        edtf.members[0].last = *last;
    }
    return edtf;
}

} // namespace

bool isSound(const Edtf& edtf) {
    const bool isSet = edtf.kind == EdtfKind::oneOf || edtf.kind == EdtfKind::allOf;
    return !edtf.members.empty() && (isSet || edtf.members.size() == 1) &&
           (isSet || edtf.members[0].last.has_value() == (edtf.kind == EdtfKind::interval)) &&
           std::ranges::all_of(edtf.members, [&](const EdtfMember& member) {
               return isSoundMember(member, edtf.kind);
           });
}

tl::expected<Edtf, TextError> parseEdtf(std::string_view text) {
    if (text.empty()) {
        return tl::unexpected(TextError{TextProblem::empty, 0});
    }
    Cursor in(text, 0);
    const bool isSet = text.starts_with('[') || text.starts_with('{');
    auto edtf = isSet ? readSet(in) : readDateOrInterval(in);
    if (!edtf) {
        return edtf;
    }
    if (!in.atEnd()) {
        return in.error(TextProblem::trailing);
    }
    if (!isSound(*edtf)) {
        return tl::unexpected(TextError{TextProblem::outOfRange, 0});
    }
    return edtf;
}

} // namespace headcap::core
