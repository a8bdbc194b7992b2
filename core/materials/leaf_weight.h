// How heavy the paper of a leaf is, as it is written: by the square metre, or by what a leaf of a
// size weighs.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "core/values/measures.h"
#include "core/values/text_error.h"

namespace headcap::core {

// "120 g/m²", "120", "5.25 g of 250 x 175 mm", in mg/m². Nothing, or above a heavy board's weight,
// is no leaf.
[[nodiscard]] tl::expected<std::int64_t, TextError> parseLeafWeight(std::string_view text);

// "120 g/m²".
[[nodiscard]] std::string leafWeightText(std::int64_t mgM2);

// Nothing where the leaf has no size. To the nearest mg.
[[nodiscard]] std::int64_t weightOfLeaf(Mass mass, Length width, Length height);

} // namespace headcap::core
