// Uses of a lot that its ledger does not know: its balance is too high by them.
#pragma once

#include <span>
#include <vector>

#include "core/materials/ledger_entry.h"
#include "core/materials/trace.h"

namespace headcap::core {

// Of the traced lot itself, in the order of the trace. Pieces cut for a job left the ledger when
// they were cut.
[[nodiscard]] std::vector<TracedUse> usesNotEntered(const LotTrace& trace,
                                                    std::span<const LedgerEntry> ledger);

} // namespace headcap::core
