#include "core/audit/rules.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/audit/facts.h"
#include "core/materials/conversion.h"
#include "core/materials/cut_for_job.h"
#include "core/materials/fitness.h"
#include "core/materials/ledger.h"
#include "core/treatment/bench_log.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

template <class Wanting>
void each(const AuditContext& at, const AuditSink& found, std::string_view says, Wanting wanting) {
    for (const MaterialUse* use : facts::standingUses(at.file)) {
        if (wanting(*use)) {
            found(*use, facts::nameOf(*use, at), says);
        }
    }
}

const Material* kindOfLot(const JobFile& file, const std::optional<Id<Lot>>& id) {
    const Lot* lot = file.lot(id);
    return lot ? file.material(lot->material) : nullptr;
}

void noLot(const AuditContext& at, const AuditSink& found) {
    each(at, found, "has no lot.", [](const MaterialUse& use) { return !use.lot; });
}

void noAmount(const AuditContext& at, const AuditSink& found) {
    each(at, found, "has no amount.",
         [](const MaterialUse& use) { return use.lot && !use.amount && !isOfCutPieces(use); });
}

void removal(const AuditContext& at, const AuditSink& found) {
    each(at, found, "stays in the book, and how it comes off is not said.",
         [&](const MaterialUse& use) {
             const Step* step = at.file.step(use.step);
             return use.stays && use.removal.empty() && step != nullptr && step->undoing.empty();
         });
}

// A lot not fit for its use, and no reason given.
template <FitnessRule kRule>
void unfit(const AuditContext& at, const AuditSink& found) {
    for (const MaterialUse* use : facts::standingUses(at.file)) {
        const Lot* lot = at.file.lot(use->lot);
        const Material* kind = kindOfLot(at.file, use->lot);
        const Step* step = at.file.step(use->step);
        if (lot == nullptr || kind == nullptr || step == nullptr || !use->overrideReason.empty()) {
            continue;
        }
        const Day on = at.clock.dayOf(step->at);
        for (const FitnessPoint& point :
             fitnessOf(*lot, *kind, purposeOf(*use, *step, at.file, on))) {
            if (point.rule == kRule) {
                found(*use, fmt::format("{} {}; no reason is given for its use on {}.",
                                        facts::nameOf(*use, at), point.sentence, dayText(on)));
            }
        }
    }
}

void usedNotBooked(const AuditContext& at, const AuditSink& found) {
    each(at, found, "is not booked in the ledger in the same amount.", [&](const MaterialUse& use) {
        const Lot* lot = at.file.lot(use.lot);
        const Material* kind = kindOfLot(at.file, use.lot);
        if (!use.amount || lot == nullptr || kind == nullptr) {
            return false;
        }
        const auto counted = asCounted(*use.amount, *lot, *kind);
        std::optional<Amount> booked{Amount{0, kind->unit}};
        for (const LedgerEntry& entry : standingEntries(at.file.ledger, use.id)) {
            booked = booked ? sum(*booked, entry.amount) : booked;
        }
        return !counted || booked != counted->negated();
    });
}

void cutNotUsed(const AuditContext& at, const AuditSink& found) {
    for (const CutForJob& cut : cutAndNotUsed(at.file)) {
        const auto cutting = std::ranges::find(at.file.cuttings, cut.cutting, &Cutting::id);
        found(*cutting,
              fmt::format("{} of lot {} ({}) {} cut for this job on {}, and no step uses {}.",
                          counted(static_cast<std::size_t>(cut.pieces), "piece", "pieces"), cut.lot,
                          listed(cut.names), cut.pieces == 1 ? "was" : "were",
                          dayText(at.clock.dayOf(cutting->at)), cut.pieces == 1 ? "it" : "them"));
    }
}

void overdrawn(const AuditContext& at, const AuditSink& found) {
    for (const Lot& lot : at.file.lots) {
        const Material* kind = at.file.material(lot.material);
        const auto balance =
            kind ? balanceOf(lot.id, kind->unit, at.file.ledger) : std::optional<Amount>{};
        if (balance && balance->count < 0) {
            found(lot, fmt::format("Lot {} is overdrawn by {}: count it, or correct what was "
                                   "booked.",
                                   lotName(lot, kind), toText(balance->negated())));
        } else if (!balance) {
            found(lot, fmt::format("The ledger of lot {} does not add up.", lotName(lot, kind)));
        }
    }
}

void origin(const AuditContext& at, const AuditSink& found) {
    for (const Lot& lot : at.file.lots) {
        const std::string name = lotName(lot, at.file.material(lot.material));
        if (lot.origin == LotOrigin::saved && lot.savedFrom.empty()) {
            found(lot, fmt::format("Lot {} was saved, and does not say from what.", name));
        }
        if (lot.origin == LotOrigin::saved && lot.whyFree.empty()) {
            found(lot,
                  fmt::format("Lot {} was saved, and does not say why it was free to use.", name));
        }
        const bool parts =
            std::ranges::find(at.file.lotParts, lot.id, &LotPart::lot) != at.file.lotParts.end();
        if (lot.origin == LotOrigin::mixed && !parts && lot.recipe.empty()) {
            found(lot, fmt::format("Lot {} was mixed, and does not say from what.", name));
        }
        if (lot.origin == LotOrigin::bought && lot.supplier.empty() && lot.maker.empty()) {
            found(lot,
                  fmt::format("Lot {} was bought, and names neither supplier nor maker.", name));
        }
    }
}

void permanence(const AuditContext& at, const AuditSink& found) {
    for (const Facsimile& leaf : at.file.facsimiles) {
        const Material* kind = kindOfLot(at.file, leaf.printedOn);
        if (kind != nullptr && kind->kind == MaterialClass::paper && kind->standard.empty()) {
            found(*kind, fmt::format("{} carries a facsimile, and no evidence of its permanence "
                                     "is noted.",
                                     capitalised(kind->name)));
            return;
        }
    }
}

constexpr auto kMust = AuditSeverity::mustSettle;
constexpr auto kWorth = AuditSeverity::worthKnowing;
constexpr std::string_view kLog = "AIC Commentary 27; E.C.C.O. II Art. 10";
constexpr std::array kRules{
    AuditRule{"material_lot", Page::materials, kMust, kLog, noLot},
    AuditRule{"material_amount", Page::materials, kWorth, kLog, noAmount},
    AuditRule{"material_removal", Page::materials, kMust, "E.C.C.O. II Art. 9", removal},
    AuditRule{"material_undoing", Page::materials, kMust, "E.C.C.O. II Art. 9",
              unfit<FitnessRule::notReversible>},
    AuditRule{"material_permanence", Page::materials, kMust, "ISO 9706",
              unfit<FitnessRule::notPermanent>},
    AuditRule{"material_cyanotype", Page::materials, kMust, "published guidance on cyanotypes",
              unfit<FitnessRule::bufferedOnPrint>},
    AuditRule{"material_weight", Page::materials, kWorth, "published practice",
              unfit<FitnessRule::tooHeavy>},
    AuditRule{"material_grain", Page::materials, kMust, "Cockerell 1901; Etherington & Roberts",
              unfit<FitnessRule::grainAcross>},
    AuditRule{"material_claim", Page::materials, kWorth, "ISO 9706",
              unfit<FitnessRule::claimUnproven>},
    AuditRule{"print_stability", Page::materials, kWorth, "ISO 11798",
              unfit<FitnessRule::printUnstable>},
    AuditRule{"lot_overdue", Page::materials, kMust, "common practice",
              unfit<FitnessRule::pastDate>},
    AuditRule{"cut_not_used", Page::materials, kWorth, "common practice", cutNotUsed},
    AuditRule{"lot_overdrawn", Page::materials, kMust, "common practice", overdrawn},
    AuditRule{"lot_booked", Page::materials, kMust, "common practice", usedNotBooked},
    AuditRule{"lot_origin", Page::materials, kMust, kLog, origin},
    AuditRule{"paper_permanence", Page::materials, kWorth, "ISO 9706", permanence},
};

} // namespace

std::span<const AuditRule> materialRules() {
    return kRules;
}

} // namespace headcap::core
