#include "core/materials/sheet_stock.h"
#include "core/materials/shelf_index.h"

#include <algorithm>

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

// Of one sheet, by the price of its kind; of an offcut, its share of the sheet it was cut from.
std::optional<Money> priceOf(const Lot& lot, const Material& kind, const Shelf& shelf) {
    if (!kind.price || lot.origin != LotOrigin::offcut) {
        return kind.price;
    }
    const Lot* whole = lot.parent ? shelf.lot(*lot.parent) : nullptr;
    while (whole != nullptr && whole->origin == LotOrigin::offcut && whole->parent &&
           *whole->parent != lot.id) {
        whole = shelf.lot(*whole->parent);
    }
    if (whole == nullptr || !whole->sheetWidth || !whole->sheetHeight) {
        return std::nullopt;
    }
    const double share = static_cast<double>(areaOf(*lot.sheetWidth, *lot.sheetHeight).count()) /
                         static_cast<double>(std::max<std::int64_t>(
                             areaOf(*whole->sheetWidth, *whole->sheetHeight).count(), 1));
    Money price = *kind.price;
    price.minor = static_cast<std::int64_t>(static_cast<double>(price.minor) * share);
    return price;
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
std::int64_t costOf(const Lot& lot, const CuttingHouse& house) {
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
        prices.push_back(priceOf(lot, *kind, shelf));
        sheets.push_back({lot.id,
                          {.id = lot.number,
                           .width = *lot.sheetWidth,
                           .height = *lot.sheetHeight,
                           .grain = grainWayOf(lot.grain),
                           .count = static_cast<int>(std::min(whole, kMostOfALot)),
                           .cost = costOf(lot, house),
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
