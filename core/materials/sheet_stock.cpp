#include "core/materials/sheet_stock.h"

#include <algorithm>

#include "core/materials/lot_cost.h"
#include "core/materials/shelf_index.h"

namespace headcap::core {
namespace {

constexpr std::int64_t kThousandths = 1'000;
constexpr std::int64_t kMostOfALot = 200; // more are never cut at once

bool isPaper(const Material& kind) {
    return kind.kind == MaterialClass::paper || kind.kind == MaterialClass::tissue;
}

// What the kind says of itself; of paper that says nothing, the house's figures.
Stretch stretchOf(const Lot& lot, const Material& kind, const CuttingHouse& house) {
    Stretch stretch;
    if (isPaper(kind)) {
        stretch = lot.grain == Grain::none
                      ? Stretch{house.handmadeStretchPpm, house.handmadeStretchPpm}
                      : house.stretch;
    }
    stretch.acrossPpm = kind.stretchAcrossPpm.value_or(stretch.acrossPpm);
    stretch.alongPpm = kind.stretchAlongPpm.value_or(stretch.alongPpm);
    return stretch;
}

// What one sheet or offcut cost, as everywhere else; what was saved cost nothing, which is no
// price.
std::optional<Money> priceOf(const Lot& lot, const Shelf& shelf) {
    const auto cost = costOf(lot, Amount::sheets(1), shelf);
    return cost && cost->minor > 0 ? cost : std::nullopt;
}

// Where every sheet has its price, that is what it counts for.
void countByPrice(std::vector<SheetOfLot>& sheets, const std::vector<std::optional<Money>>& prices,
                  const Shelf& shelf, const CuttingHouse& house) {
    const auto isKnown = [&](const std::optional<Money>& price) {
        return price && price->minor >= 0 && price->minor < 1'000'000'000 &&
               price->currency == prices.front()->currency;
    };
    if (sheets.empty() || !prices.front() || !std::ranges::all_of(prices, isKnown)) {
        return;
    }
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        const bool isOffcut = shelf.lot(sheets[i].lot)->origin == LotOrigin::offcut;
        sheets[i].sheet.cost = prices[i]->minor * (isOffcut ? house.offcutCostPpm : 1'000'000);
    }
}

// Millionths of mm².
std::int64_t areaCostOf(const Lot& lot, const CuttingHouse& house) {
    const std::int64_t area = areaOf(*lot.sheetWidth, *lot.sheetHeight).count();
    return lot.origin == LotOrigin::offcut ? area / 1'000'000 * house.offcutCostPpm : area;
}

} // namespace

std::vector<SheetOfLot> sheetsOnShelf(const Shelf& shelf, const CuttingHouse& house) {
    std::vector<SheetOfLot> sheets;
    std::vector<std::optional<Money>> prices;
    const ShelfIndex index{shelf};
    for (const Lot& lot : shelf.lots) {
        const Material* kind = index.material(lot.material);
        if (kind == nullptr || kind->unit != Unit::sheet || lot.finished || !lot.sheetWidth ||
            !lot.sheetHeight) {
            continue;
        }
        const auto balance = index.balanceOf(lot);
        const std::int64_t whole = balance ? balance->count / kThousandths : 0;
        if (whole < 1) {
            continue;
        }
        const Length trim = house.edgeTrim;
        prices.push_back(priceOf(lot, shelf));
        sheets.push_back({lot.id,
                          {.id = lot.number,
                           .width = *lot.sheetWidth,
                           .height = *lot.sheetHeight,
                           .grain = grainWayOf(lot.grain),
                           .count = static_cast<int>(std::min(whole, kMostOfALot)),
                           .cost = areaCostOf(lot, house),
                           .isKeptBack = lot.keptBack || kind->keptBack,
                           .trim = {trim, trim, trim, trim},
                           .stretch = stretchOf(lot, *kind, house)}});
    }
    countByPrice(sheets, prices, shelf, house);
    return sheets;
}

CuttingHouse cuttingHouse(std::span<const HouseValue> own) {
    CuttingHouse house;
    for (const HouseValue& value : own) {
        if (const HouseFigure* figure = houseFigureNamed(value.key)) {
            (void)put(*figure, value.value, house);
        }
    }
    return house;
}

GrainWay grainWayOf(Grain grain) {
    switch (grain) {
    case Grain::alongWidth:
        return GrainWay::alongWidth;
    case Grain::alongHeight:
        return GrainWay::alongHeight;
    case Grain::none:
        break;
    }
    return GrainWay::none;
}

Grain grainOf(GrainWay way) {
    switch (way) {
    case GrainWay::alongWidth:
        return Grain::alongWidth;
    case GrainWay::alongHeight:
        return Grain::alongHeight;
    case GrainWay::none:
        break;
    }
    return Grain::none;
}

} // namespace headcap::core
