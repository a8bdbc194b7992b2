#include "core/materials/lot_cost.h"

#include <vector>

#include "core/materials/conversion.h"
#include "core/values/fraction.h"

namespace headcap::core {
namespace {

// Minor units for one exact count of the lot's unit.
struct Rate {
    Fraction minor{};
    std::string currency{};
};

class Costing {
public:
    explicit Costing(const Shelf& shelf) : m_shelf(shelf) {}

    std::optional<Rate> rateOf(const Lot& lot) {
        for (const Lot* above : m_way) {
            if (above->id == lot.id) {
                return std::nullopt;
            }
        }
        m_way.push_back(&lot);
        auto rate = found(lot);
        m_way.pop_back();
        return rate;
    }

private:
    std::optional<Rate> found(const Lot& lot) {
        const Material* kind = m_shelf.material(lot.material);
        if (lot.cost) {
            const std::int64_t came = cameIn(lot);
            return came > 0 ? std::optional{Rate{{lot.cost->minor, came}, lot.cost->currency}}
                            : std::nullopt;
        }
        if (lot.origin == LotOrigin::mixed) {
            return ofParts(lot);
        }
        if (lot.origin == LotOrigin::offcut && lot.parent) {
            return ofSheet(lot);
        }
        if (lot.origin == LotOrigin::saved) {
            return Rate{};
        }
        if (kind != nullptr && !kind->price && isWater(*kind)) {
            return Rate{};
        }
        if (kind != nullptr && kind->price) {
            return Rate{{kind->price->minor, countOfOne(kind->unit)}, kind->price->currency};
        }
        return std::nullopt;
    }

    // Water that was given no price costs nothing; else no paste had a cost.
    static bool isWater(const Material& kind) {
        return kind.kindKey == "solvent/water" ||
               (kind.kind == MaterialClass::solvent && kind.name.starts_with("Water"));
    }

    static std::int64_t countOfOne(Unit unit) {
        switch (unit) {
        case Unit::gram:
        case Unit::squareMillimetre:
            return 1'000'000;
        case Unit::metre:
            return 1'000'000'000;
        case Unit::millilitre:
        case Unit::sheet:
        case Unit::piece:
            break;
        }
        return 1'000;
    }

    // What was received, saved, mixed or cut into it, corrections and countings apart.
    [[nodiscard]] std::int64_t cameIn(const Lot& lot) const {
        Wide came = 0;
        for (const LedgerEntry& entry : m_shelf.ledger) {
            if (entry.lot == lot.id && entry.amount.count > 0 &&
                entry.kind != LedgerKind::counted && entry.kind != LedgerKind::contrary) {
                came += entry.amount.count;
            }
        }
        return clampedCount(came);
    }

    // In the unit the lot is counted in.
    [[nodiscard]] std::optional<std::int64_t> countOf(Amount amount, const Lot& lot) const {
        const Material* kind = m_shelf.material(lot.material);
        const auto counted = kind == nullptr ? tl::unexpected(ConversionProblem::otherKind)
                                             : asCounted(amount, lot, *kind);
        return counted ? std::optional{counted->count} : std::nullopt;
    }

    std::optional<Rate> ofParts(const Lot& lot) {
        Rate whole;
        bool hasParts = false;
        for (const LotPart& part : m_shelf.parts) {
            if (part.lot != lot.id) {
                continue;
            }
            const Lot* source = m_shelf.lot(part.source);
            const auto taken = source == nullptr ? std::nullopt : countOf(part.amount, *source);
            const auto rate = taken ? rateOf(*source) : std::nullopt;
            if (!rate || !add(whole, *rate, *taken)) {
                return std::nullopt;
            }
            hasParts = true;
        }
        const std::int64_t came = cameIn(lot);
        if (!hasParts || came <= 0) {
            return std::nullopt;
        }
        whole.minor = whole.minor.times(1, came);
        return whole;
    }

    std::optional<Rate> ofSheet(const Lot& lot) {
        const Lot* sheet = m_shelf.lot(*lot.parent);
        if (sheet == nullptr || !sheet->sheetWidth || !sheet->sheetHeight || !lot.sheetWidth ||
            !lot.sheetHeight) {
            return std::nullopt;
        }
        const std::int64_t whole = areaOf(*sheet->sheetWidth, *sheet->sheetHeight).count();
        auto rate = rateOf(*sheet);
        if (!rate || whole <= 0) {
            return std::nullopt;
        }
        const std::int64_t piece = areaOf(*lot.sheetWidth, *lot.sheetHeight).count();
        rate->minor = rate->minor.times(piece, whole);
        return rate;
    }

    // What costs nothing has no currency.
    static bool add(Rate& whole, const Rate& rate, std::int64_t count) {
        if (!rate.currency.empty() && !whole.currency.empty() && rate.currency != whole.currency) {
            return false;
        }
        whole.currency = whole.currency.empty() ? rate.currency : whole.currency;
        whole.minor = whole.minor.plus(rate.minor.times(count, 1));
        return true;
    }

    const Shelf& m_shelf;
    std::vector<const Lot*> m_way;
};

} // namespace

std::optional<Money> costOf(const Lot& lot, Amount amount, const Shelf& shelf) {
    const Material* kind = shelf.material(lot.material);
    const auto counted = kind == nullptr ? tl::unexpected(ConversionProblem::otherKind)
                                         : asCounted(amount, lot, *kind);
    const auto rate = counted ? Costing{shelf}.rateOf(lot) : std::nullopt;
    if (!rate) {
        return std::nullopt;
    }
    Money cost{rate->minor.of(counted->count)};
    if (!rate->currency.empty()) {
        cost.currency = rate->currency;
    }
    return cost;
}

} // namespace headcap::core
