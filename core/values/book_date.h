// The date of a book: EDTF (ISO 8601-2, Library of Congress profile), so that "about 1590",
// "1702–1741" and "16th century" are dates that can be compared, and are kept as what they are.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "core/values/text_error.h"

namespace headcap::core {

struct BookDate {
    std::string edtf; // canonical, never empty where a record holds one

    friend bool operator==(const BookDate&, const BookDate&) = default;
};

// Reads EDTF levels 0 and 1 with the sets of level 2 (edtf.h), and what people type for them:
// "1612", "ca. 1590", "1702-1741", "[1655?]", "MDCXII", "16th century", "[not after 1660]",
// "12 March 1612". "1702-12" is EDTF's December, "1702–12" with a dash ten years; "1648/9" is one
// year or the other. "n.d." and "s.a." are the error `empty`.
[[nodiscard]] tl::expected<BookDate, TextError> parseBookDate(std::string_view text);

// As a title line says it: "1612", "ca. 1590", "1702–1741", "1655?", "16th century". Read again it
// is the same date, save what a title line leaves out: an unknown month or day, the time of day.
[[nodiscard]] std::string toText(const BookDate& date);

struct YearSpan {
    int first = 0;
    int last = 0;
};

// The years it may cover; nothing for an open or unknown end.
[[nodiscard]] std::optional<YearSpan> yearsOf(const BookDate& date);

} // namespace headcap::core
