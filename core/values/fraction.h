// A share that is multiplied and divided on and rounded once, at the end: the price of one count of
// a mix made of mixes. Exact as long as its terms in lowest terms are under 2^63; beyond that
// correct to 61 bits.
#pragma once

#include <cstdint>

#include "core/values/wide.h"

namespace headcap::core {

class Fraction {
public:
    constexpr Fraction() = default; // nothing
    // The denominator is above nothing.
    Fraction(std::int64_t numerator, std::int64_t denominator);

    // Times above / below; below is above nothing.
    [[nodiscard]] Fraction times(std::int64_t above, std::int64_t below) const;
    [[nodiscard]] Fraction plus(const Fraction& other) const;
    // Times a count, to the nearest whole, half away from nothing; what is beyond counting is the
    // most that can be counted.
    [[nodiscard]] std::int64_t of(std::int64_t count) const;

private:
    static Fraction lowest(Wide numerator, Wide denominator);

    std::int64_t m_numerator = 0;
    std::int64_t m_denominator = 1;
};

} // namespace headcap::core
