// Whole numbers of 128 bits: products of counts, before they are divided again.
#pragma once

#include <algorithm>
#include <cstdint>
#include <limits>

namespace headcap::core {

__extension__ using Wide = __int128;

// To the nearest whole, half away from nothing. The denominator is above nothing.
[[nodiscard]] constexpr Wide nearest(Wide numerator, Wide denominator) {
    const Wide whole = numerator / denominator;
    const Wide rest = numerator % denominator;
    const Wide size = rest < 0 ? -rest : rest;
    const bool isUp = size >= denominator - size;
    return isUp ? whole + (numerator < 0 ? -1 : 1) : whole;
}

// As a count; what is beyond counting is the most that can be counted.
[[nodiscard]] constexpr std::int64_t clampedCount(Wide value) {
    constexpr Wide kMost = std::numeric_limits<std::int64_t>::max();
    return static_cast<std::int64_t>(std::clamp(value, -kMost, kMost));
}

} // namespace headcap::core
