// Applies a change to a job's file as a store would, for tests of what follows from it.
#pragma once

#include <algorithm>

#include "core/record/change.h"
#include "core/record/job_file.h"

namespace headcap::core::tests {

template <class Record>
void applyTo(std::vector<Record>& records, const Write& write) {
    const auto* record = std::get_if<Record>(&write.record);
    if (record == nullptr) {
        return;
    }
    const auto known = std::ranges::find(records, record->id, &Record::id);
    if (write.what == Write::What::remove) {
        records.erase(known);
    } else if (known != records.end()) {
        *known = *record;
    } else {
        records.push_back(*record);
    }
}

inline void applyTo(JobFile& file, const Change& change) {
    for (const Write& write : change.writes) {
        if (const auto* job = std::get_if<Job>(&write.record)) {
            file.job = *job;
        }
        applyTo(file.steps, write);
        applyTo(file.uses, write);
        applyTo(file.ledger, write);
        applyTo(file.facsimiles, write);
        applyTo(file.photographs, write);
        applyTo(file.clocks, write);
        applyTo(file.settings, write);
        applyTo(file.stepChecks, write);
        applyTo(file.explanations, write);
        applyTo(file.pieces, write);
        applyTo(file.releaseChecks, write);
        applyTo(file.handBacks, write);
        applyTo(file.followUps, write);
        applyTo(file.moves, write);
        applyTo(file.stateChanges, write);
    }
}

} // namespace headcap::core::tests
