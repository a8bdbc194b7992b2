#include <set>
#include <tuple>

#include <fmt/format.h>

#include "core/materials/by_key.h"
#include "core/materials/ledger_sums.h"

namespace headcap::core {
namespace {

constexpr std::int64_t kSheet = 1'000; // thousandths

void wholeSheet(std::vector<LedgerBreach>& breaches, const Lot* lot, const Cutting& cutting,
                std::int64_t area) {
    if (lot == nullptr || !lot->sheetWidth || !lot->sheetHeight) {
        return;
    }
    const std::int64_t whole = areaOf(*lot->sheetWidth, *lot->sheetHeight).count();
    if (whole != area) {
        breaches.push_back(
            {LedgerLaw::sheetAddsUp, refOf(cutting.id),
             fmt::format("What came of a sheet of lot {} is {}, and the sheet is {}.", lot->number,
                         toText(Amount{area, Unit::squareMillimetre}),
                         toText(Amount{whole, Unit::squareMillimetre}))});
    }
}

} // namespace

std::vector<LedgerBreach> cuttingBreaches(const LedgerBook& book,
                                          const std::map<Id<Lot>, std::int64_t>& cut) {
    std::vector<LedgerBreach> breaches;
    const ByKey<Lot> lots{book.shelf.lots};
    const ByKey<Cutting> known{book.cuttings};
    using Sheet = std::tuple<Id<Lot>, Id<Cutting>, std::int64_t>;
    std::map<Sheet, std::int64_t> areas;
    std::map<Id<Lot>, std::int64_t> said;
    for (const CutPart& part : book.cutParts) {
        const Cutting* cutting = known.find(part.cutting);
        if (cutting == nullptr || cutting->takenBackAt) {
            continue;
        }
        const Sheet sheet{part.sheet, part.cutting, part.sheetNumber};
        if (!areas.contains(sheet)) {
            addTo(said, part.sheet, -kSheet);
        }
        addTo(areas, sheet, part.area.count());
        if (part.offcut) {
            addTo(said, *part.offcut, kSheet);
        }
    }
    for (const auto& [sheet, area] : areas) {
        wholeSheet(breaches, lots.find(std::get<0>(sheet)), *known.find(std::get<1>(sheet)), area);
    }
    for (const Lot& lot : book.shelf.lots) {
        if (valueOf(said, lot.id) != valueOf(cut, lot.id)) {
            breaches.push_back(
                {LedgerLaw::cutBooked, refOf(lot.id),
                 fmt::format("The cuttings say {} of lot {}, and its ledger says {}.",
                             toText(Amount{valueOf(said, lot.id), Unit::sheet}), lot.number,
                             toText(Amount{valueOf(cut, lot.id), Unit::sheet}))});
        }
    }
    return breaches;
}

} // namespace headcap::core
