// The sheets and offcuts on the shelf as the cutting plan takes them: how many whole ones are left
// of each lot, their grain, how they stretch when pasted, and what they count for, so that offcuts
// go before whole sheets and what is kept back goes last.
#pragma once

#include <span>
#include <vector>

#include "core/cutting/house_figures.h"
#include "core/materials/recipe_record.h"
#include "core/materials/shelf.h"

namespace headcap::core {

struct SheetOfLot {
    Id<Lot> lot;
    StockSheet sheet; // its id is the lot's number
};

// Every lot that can be cut: counted in sheets, of a known size, with a whole one left.
[[nodiscard]] std::vector<SheetOfLot> sheetsOnShelf(const Shelf& shelf, const CuttingHouse& house);

// The house's figures with the workshop's own; what can't be read stays as it ships.
[[nodiscard]] CuttingHouse cuttingHouse(std::span<const HouseValue> own);

[[nodiscard]] GrainWay grainWayOf(Grain grain);
[[nodiscard]] Grain grainOf(GrainWay way);

} // namespace headcap::core
