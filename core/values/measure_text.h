// Measures as people write and read them: "148 mm", "14.8 cm", "3/8 in", "1 1/2 in", "12,5 mm".
#pragma once

#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "core/values/measures.h"
#include "core/values/text_error.h"

namespace headcap::core {

// A bare number is millimetres, as bookbinders write it. Exact: what nanometres can't hold is an
// error, never rounded.
[[nodiscard]] tl::expected<Length, TextError> parseLength(std::string_view text);

// Millimetres, exact, without needless zeros: "148 mm", "1.5875 mm".
[[nodiscard]] std::string toText(Length length);

} // namespace headcap::core
