// Dates as the Extended Date/Time Format writes them (ISO 8601-2; Library of Congress
// specification of 4 February 2019): levels 0 and 1, and of level 2 the sets, for cataloguers
// write "1655 or 1656" and "not after 1660". Strict: what people type is book_date.h.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "core/values/text_error.h"

namespace headcap::core {

struct EdtfDate {
    static constexpr int kUnspecified = -1; // "XX"

    std::int64_t year = 0;     // its unspecified digits are 0
    int unspecifiedDigits = 0; // of the year, from the right, 0 to 4
    int month = 0;             // 1 to 12, a season 21 to 24, kUnspecified, or 0 where there is none
    int day = 0;               // 1 to 31, kUnspecified, or 0 where there is none
    std::string time;          // "T23:20:30Z" as written, or empty
    char qualifier = '\0';     // '?' uncertain, '~' approximate, '%' both, or none

    [[nodiscard]] bool isSeason() const { return month > 12; }
    friend bool operator==(const EdtfDate&, const EdtfDate&) = default;
};

enum class EdtfEndKind { date, open, unknown };

struct EdtfEnd {
    EdtfEndKind kind = EdtfEndKind::date;
    EdtfDate date; // where kind is date

    friend bool operator==(const EdtfEnd&, const EdtfEnd&) = default;
};

// One date, or all from one to another.
struct EdtfMember {
    EdtfEnd first;
    std::optional<EdtfEnd> last; // nothing for one date

    friend bool operator==(const EdtfMember&, const EdtfMember&) = default;
};

enum class EdtfKind { date, interval, oneOf, allOf };

struct Edtf {
    EdtfKind kind = EdtfKind::date;
    std::vector<EdtfMember> members; // one for a date and for an interval

    friend bool operator==(const Edtf&, const Edtf&) = default;
};

[[nodiscard]] tl::expected<Edtf, TextError> parseEdtf(std::string_view text);
[[nodiscard]] std::string edtfText(const Edtf& edtf);

// The earliest and the latest year of a date: 15XX is 1500 to 1599.
[[nodiscard]] std::int64_t firstYear(const EdtfDate& date);
[[nodiscard]] std::int64_t lastYear(const EdtfDate& date);

// Whether a date can be, and ends come in order, as parseEdtf demands.
[[nodiscard]] bool isSound(const Edtf& edtf);

} // namespace headcap::core
