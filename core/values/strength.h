// How strong a solution or dispersion is, with its basis: a bare ratio means nothing ("1 : 4" is
// 12.5 % by one published recipe for paste and 20 % by weight).
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "core/values/text_error.h"

namespace headcap::core {

enum class StrengthBasis { weightInVolume, weightInWeight, volumeInVolume }; // w/v, w/w, v/v

struct Strength {
    std::int64_t partsPerMillion = 0; // 2 % w/v, 2 g in 100 ml, is 20,000
    StrengthBasis basis = StrengthBasis::weightInVolume;

    friend bool operator==(const Strength&, const Strength&) = default;
};

// Reads "2 % w/v", "2.5% w/w"; the basis must be there.
[[nodiscard]] tl::expected<Strength, TextError> parseStrength(std::string_view text);

// "2 % w/v".
[[nodiscard]] std::string toText(const Strength& strength);

} // namespace headcap::core
