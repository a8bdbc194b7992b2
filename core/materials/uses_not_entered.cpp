#include "core/materials/uses_not_entered.h"

#include <algorithm>

#include "core/materials/cut_for_job.h"

namespace headcap::core {

std::vector<TracedUse> usesNotEntered(const LotTrace& trace, std::span<const LedgerEntry> ledger) {
    std::vector<TracedUse> uses;
    for (const TracedJob& job : trace.jobs) {
        std::ranges::copy_if(job.uses, std::back_inserter(uses), [&](const TracedUse& one) {
            return one.lot == trace.lot && !isOfCutPieces(*one.use) &&
                   std::ranges::none_of(
                       ledger, [&](const LedgerEntry& entry) { return entry.use == one.use->id; });
        });
    }
    return uses;
}

} // namespace headcap::core
