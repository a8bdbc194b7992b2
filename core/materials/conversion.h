// An amount of a lot in another unit, where the lot says enough of itself: sheets, their area by
// the size of the sheet, their weight by the weight of a square metre. Nothing else converts:
// metres of thread are not grams of it, and a piece is a piece.
#pragma once

#include <cstdint>
#include <optional>

#include <tl/expected.hpp>

#include "core/materials/material.h"

namespace headcap::core {

enum class ConversionProblem {
    otherKind,        // of measure: nothing leads from the one unit to the other
    sheetSizeUnknown, // the lot does not say how large its sheets are
    weightUnknown,    // nor its kind what a square metre weighs
    tooLittle,        // less than the other unit counts: half a thousandth of a sheet
    tooMuch,          // more than can be counted
};

// What a lot must say of itself for its amounts to be converted.
struct LotMeasures {
    std::optional<Length> sheetWidth{};
    std::optional<Length> sheetHeight{};
    std::int64_t grammageMgM2 = 0; // 0: not known
};

[[nodiscard]] LotMeasures measuresOf(const Lot& lot, const Material& kind);

// To the nearest count of the unit, halves away from nothing. An amount in its own unit is itself.
[[nodiscard]] tl::expected<Amount, ConversionProblem> converted(Amount amount, Unit to,
                                                                const LotMeasures& lot);

// In the unit the lot is counted in.
[[nodiscard]] tl::expected<Amount, ConversionProblem> asCounted(Amount amount, const Lot& lot,
                                                                const Material& kind);

} // namespace headcap::core
