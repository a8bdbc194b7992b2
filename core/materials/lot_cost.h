// What an amount of a lot cost: a bought lot by its cost for what came in, a mixed one by what its
// parts cost, an offcut by its share of the sheet it was cut from. Nothing where a part of it has
// no cost; currencies are not mixed.
#pragma once

#include <optional>

#include "core/materials/shelf.h"

namespace headcap::core {

// To the nearest minor unit, half away from nothing, rounded once. A lot made from itself by a
// wrong record costs nothing known.
[[nodiscard]] std::optional<Money> costOf(const Lot& lot, Amount amount, const Shelf& shelf);

} // namespace headcap::core
