// What is told of one lot: where it went, and the newest of its ledger. Read away from the window:
// a lot that is used for years reaches far.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/materials/trace.h"

namespace headcap::app {

struct LotStory {
    core::Whereabouts whereabouts;           // by its newest uses
    std::optional<core::LotTrace> trace{};   // into the whereabouts
    std::vector<core::LedgerEntry> newest{}; // in their order
    bool hasEarlier = false;
};

// Never null.
[[nodiscard]] std::shared_ptr<const LotStory> readLotStory(const core::RecordStore& store,
                                                           const core::Id<core::Lot>& lot);

} // namespace headcap::app
