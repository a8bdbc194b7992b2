#include "core/values/edtf_date.h"

#include <chrono>

namespace headcap::core {
namespace {

constexpr std::int64_t kLargestYear = 1'000'000'000'000'000;
constexpr std::int64_t kSpans[] = {0, 9, 99, 999, 9'999}; // by the digits that are not specified

constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
constexpr bool isQualifier(char c) {
    return c == '?' || c == '~' || c == '%';
}

// "Y170000002": more than four digits, and that is all of the date.
tl::expected<EdtfDate, TextError> readLongYear(EdtfCursor& in) {
    EdtfDate date;
    const bool negative = in.take("-");
    const std::size_t digits = in.digits();
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
tl::expected<EdtfDate, TextError> readYear(EdtfCursor& in) {
    EdtfDate date;
    const EdtfCursor start = in;
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

// "", "Z", "-04", "+04:30".
bool readOffset(EdtfCursor& in) {
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

// "T23:20:30", "T23:20:30Z", "T23:20:30-04", "T23:20:30+04:30".
bool readTime(EdtfCursor& in) {
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
        const std::size_t digits = in.digits();
        if (digits == 0) {
            return false;
        }
        in.skip(digits);
    }
    return readOffset(in);
}

std::optional<int> twoDigitsOrUnspecified(EdtfCursor& in) {
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

// "-03", "-03-05", "-XX"; their first mark is taken. Gives what is wrong, and where.
std::optional<TextError> readMonthAndDay(EdtfCursor& in, EdtfDate& date) {
    for (int* part : {&date.month, &date.day}) {
        const auto read = twoDigitsOrUnspecified(in);
        if (!read || *read == 0) {
            return in.error(read ? TextProblem::outOfRange : TextProblem::malformed).value();
        }
        *part = *read;
        if (part == &date.day || !in.take("-")) {
            break;
        }
    }
    return std::nullopt;
}

} // namespace

bool isSoundDate(const EdtfDate& date) {
    const bool monthIsRead = date.month == EdtfDate::kUnspecified || date.month == 0 ||
                             (date.month >= 1 && date.month <= 12) ||
                             (date.month >= 21 && date.month <= 24);
    const bool yearAllows =
        date.month == 0 || date.month == EdtfDate::kUnspecified || date.unspecifiedDigits == 0;
    return monthIsRead && yearAllows && isSoundDay(date);
}

tl::expected<EdtfDate, TextError> readEdtfDate(EdtfCursor& in) {
    const EdtfCursor start = in;
    const bool isLong = in.take("Y");
    auto date = isLong ? readLongYear(in) : readYear(in);
    if (!date) {
        return date;
    }
    if (!isLong && in.take("-")) {
        if (const auto wrong = readMonthAndDay(in, *date)) {
            return tl::unexpected(*wrong);
        }
    }
    if (!isSoundDate(*date)) {
        return start.error(TextProblem::outOfRange);
    }
    if (date->day > 0 && in.rest().starts_with('T')) {
        const EdtfCursor time = in;
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

std::int64_t firstYear(const EdtfDate& date) {
    return date.year < 0 ? date.year - kSpans[date.unspecifiedDigits] : date.year;
}

std::int64_t lastYear(const EdtfDate& date) {
    return date.year < 0 ? date.year : date.year + kSpans[date.unspecifiedDigits];
}

} // namespace headcap::core
