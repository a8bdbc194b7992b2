// What undoing means for what is permanent. The bench log, the ledger, state changes and custody
// moves are never removed: taking them back writes their contrary, and both remain. What was issued
// or sent can't be taken back at all.
#pragma once

#include <optional>
#include <vector>

#include <tl/expected.hpp>

#include "core/record/change.h"
#include "core/record/stores.h"

namespace headcap::core {

struct TakingBack {
    Instant at;
    std::optional<Id<Person>> who{};
};

// Nothing, or why an entry can't be taken back: it issued a report or sent a proposal, or it added
// a use of material to a step that was logged before.
[[nodiscard]] std::optional<Refusal> whyNotTakenBack(const JournalEntry& entry);

// What is written when this permanent record, added by the entry and as it stands now, is taken
// back: a step is struck; a ledger entry or move has its contrary; a cutting says that it was taken
// back; a use of material and a check go with their step, the parts of a cutting with it. Keys come
// from `keys`.
[[nodiscard]] std::vector<Write> contraryOf(const AnyRecord& record, const JournalEntry& entry,
                                            const TakingBack& taking, IdSource& keys);

// The records an entry added, not permanent themselves, that its permanent ones name: they can't
// go while those stay.
[[nodiscard]] std::vector<RecordRef> heldByPermanent(const JournalEntry& entry);

// What is written instead of removing such a record: a lot is finished, a job withdrawn, anything
// else stays as it is.
[[nodiscard]] std::vector<Write> insteadOfRemoval(const AnyRecord& record, const TakingBack& taking,
                                                  IdSource& keys);

// The record with the fields that changed from `before` to `after` put back; nothing where one of
// them is no longer as it was after.
[[nodiscard]] std::optional<AnyRecord> fieldsPutBack(const AnyRecord& now, const AnyRecord& before,
                                                     const AnyRecord& after);

} // namespace headcap::core
