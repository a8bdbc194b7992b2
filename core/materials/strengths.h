// The arithmetic of mixing: how much of what for a strength wanted, and one basis of strength in
// terms of another. Volumes are taken to add up; ethanol and water come to a few per cent less, so
// a flask is filled to its mark all the same. Densities in mg/ml.
#pragma once

#include <cstdint>
#include <optional>

#include <tl/expected.hpp>

#include "core/values/amount.h"
#include "core/values/strength.h"

namespace headcap::core {

enum class StrengthProblem {
    notAbove, // a strength or an amount of nothing, or less
    strongerThanStock,
    densityUnknown, // the basis changes, and how heavy it is must be known
    otherMeasure,   // w/v and v/v are reckoned in ml, w/w in g
    beyondWhole,    // more than all of it
    tooMuch,        // more than can be counted
    tooLittle,      // less than can be counted, and not nothing
};

struct Densities {
    std::optional<std::int64_t> solution{}; // between w/v and w/w
    std::optional<std::int64_t> solute{};   // between v/v and the others
};

// To the nearest millionth.
[[nodiscard]] tl::expected<Strength, StrengthProblem>
inBasis(const Strength& strength, StrengthBasis to, const Densities& densities);

struct Dilution {
    Amount stock;
    Amount diluent;
    friend bool operator==(const Dilution&, const Dilution&) = default;
};

// Of the stock and of what thins it, for so much of the strength wanted: in ml for w/v and v/v, in
// g for w/w. A stock of another basis is reckoned in the basis wanted first, by its densities.
[[nodiscard]] tl::expected<Dilution, StrengthProblem>
diluted(const Strength& stock, const Strength& wanted, Amount total, const Densities& ofStock);

// What goes into so much solvent, as recipes say it: 2 % w/v in 250 ml is 5 g, 2 % w/w in 98 g is
// 2 g, 10 % v/v in 90 ml is 10 ml.
[[nodiscard]] tl::expected<Amount, StrengthProblem> soluteIn(Amount solvent,
                                                             const Strength& wanted);

} // namespace headcap::core
