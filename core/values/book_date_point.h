// One date as people type it, with "ca.", "perhaps", "?" and "anno" around it: the piece that the
// spans, bounds and lists of book_date.h are made of. Texts come as foldForSearch leaves them,
// with a long dash as kLongDash and a reversed C as ')'.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/values/edtf.h"

namespace headcap::core {

constexpr char kLongDash = '_';

[[nodiscard]] std::optional<EdtfDate> datePoint(std::string text);
// "16th century", "s. XVI", "2nd millennium".
[[nodiscard]] std::optional<EdtfDate> centuryDate(std::string text);
[[nodiscard]] EdtfDate dateOfYear(std::int64_t year, int unspecifiedDigits = 0);

// Uncertain and approximate together are '%'.
[[nodiscard]] char joinedQualifier(char a, char b);

// Up to four digits and nothing else.
[[nodiscard]] std::optional<int> plainNumber(std::string_view text);
// The words between blanks and commas, without "of", "the", "die", "mense".
[[nodiscard]] std::vector<std::string> dateWords(std::string_view text);
// Without blanks at the ends, doubled ones, or a comma left behind.
[[nodiscard]] std::string tidyDate(std::string_view text);
[[nodiscard]] std::string replacedIn(std::string text, std::string_view what, std::string_view by);

} // namespace headcap::core
