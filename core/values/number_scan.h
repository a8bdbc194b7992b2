// Numbers at the head of a text, exact, for the readers of measures, amounts, money and strengths.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

#include <tl/expected.hpp>

#include "core/values/text_error.h"

namespace headcap::core {

// A number as written, in lowest terms where it was a decimal: numerator over denominator.
struct ScannedNumber {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1; // positive
    std::size_t length = 0;       // bytes read
    bool isFraction = false;      // written "3/8", "1 1/2", "½"
};

// What may stand in a number beside digits, a sign, and one point or comma.
struct NumberForms {
    bool fractions = false; // "3/8", "1 1/2", "1½"
    bool groups = false;    // "1 250", digits in threes
};

// Reads the longest number that the text begins with. Offsets of errors count from the text's head.
[[nodiscard]] tl::expected<ScannedNumber, TextError> scanNumber(std::string_view text,
                                                                NumberForms forms);

// The number times perUnit, as a whole count: tooFine where it is not whole, tooLarge past int64.
[[nodiscard]] tl::expected<std::int64_t, TextProblem> wholeCount(const ScannedNumber& number,
                                                                 std::int64_t perUnit);

// Bytes of blanks at the head: space, tab, and the no-break and thin spaces of printed figures.
[[nodiscard]] std::size_t blanksAtHead(std::string_view text);

// The text without blanks at either end.
[[nodiscard]] std::string_view trimmed(std::string_view text);

// 10^exponent, for exponents 0 to 18.
[[nodiscard]] std::int64_t powerOfTen(int exponent);

} // namespace headcap::core
