// How much of a material: a number of one unit, exact, and what unit that is. A lot is counted in
// one unit all its life; amounts of different units do not add.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "core/values/measures.h"
#include "core/values/text_error.h"

namespace headcap::core {

// What a lot is counted in. The exact count of each: µg, µl, µm², nm, thousandths of a sheet,
// thousandths of a piece.
enum class Unit { gram, millilitre, squareMillimetre, metre, sheet, piece };

struct Amount {
    std::int64_t count = 0; // in the exact count of its unit
    Unit unit = Unit::piece;

    [[nodiscard]] static constexpr Amount of(Mass m) { return {m.count(), Unit::gram}; }
    [[nodiscard]] static constexpr Amount of(Volume v) { return {v.count(), Unit::millilitre}; }
    [[nodiscard]] static constexpr Amount of(Area a) { return {a.count(), Unit::squareMillimetre}; }
    [[nodiscard]] static constexpr Amount of(Length l) { return {l.count(), Unit::metre}; }
    [[nodiscard]] static constexpr Amount sheets(std::int64_t n) {
        return {n * 1'000, Unit::sheet};
    }
    [[nodiscard]] static constexpr Amount pieces(std::int64_t n) {
        return {n * 1'000, Unit::piece};
    }
    [[nodiscard]] constexpr Amount negated() const { return {-count, unit}; }

    friend constexpr bool operator==(const Amount&, const Amount&) = default;
};

// Reads "0.4 g", "12,5 ml", "2 sheets", "3 pieces", "120 mm2", "1.5 m"; units are never guessed.
[[nodiscard]] tl::expected<Amount, TextError> parseAmount(std::string_view text);

// "0.4 g", "2 sheets", "1 sheet", "1,250 mm²" without group marks: exact, point, no needless zeros.
[[nodiscard]] std::string toText(Amount amount);

// The sum, or nothing where the units differ.
[[nodiscard]] std::optional<Amount> sum(Amount a, Amount b);

} // namespace headcap::core
