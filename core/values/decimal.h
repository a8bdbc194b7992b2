// Exact decimal numbers out of text, and back: no floating point comes between a figure that was
// typed and the figure that is kept.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "core/values/text_error.h"

namespace headcap::core {

// Reads "12", "12.5", "12,5", "-0.25" as a whole number of 10^-places.
// "12.345" with two places is tooFine, not rounded. The whole text must be the number.
[[nodiscard]] tl::expected<std::int64_t, TextError> parseDecimal(std::string_view text, int places);

// The reverse, with a point and without needless zeros: (12500, 3) is "12.5".
[[nodiscard]] std::string decimalText(std::int64_t count, int places);

} // namespace headcap::core
