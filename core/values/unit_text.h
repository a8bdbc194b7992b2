// A number and the spelling of its unit, for the readers of measures and amounts: "12.5 mm".
#pragma once

#include <cstdint>
#include <span>
#include <string_view>

#include <tl/expected.hpp>

#include "core/values/number_scan.h"
#include "core/values/text_error.h"

namespace headcap::core {

struct NumberAndUnit {
    ScannedNumber number;
    std::string_view unit; // as written, without a closing point; empty where there was none
    std::size_t numberAt = 0;
    std::size_t unitAt = 0;
};

// Splits "1 1/2 in." into its number and its unit; blanks around and between are of no account.
[[nodiscard]] tl::expected<NumberAndUnit, TextError> splitNumberAndUnit(std::string_view text);

// Whether two spellings are the same but for the case of ASCII letters.
[[nodiscard]] bool sameLetters(std::string_view a, std::string_view b);

} // namespace headcap::core
