// Taking an entry of the journal back. What may be removed or edited is put back by the inverted
// change set; what is permanent stays, and its contrary is written beside it (core/record/
// contrary.h). The reversal is an entry of its own.
#pragma once

#include "core/record/stores.h"
#include "core/values/id.h"
#include "db/sqlite/recorded_transaction.h"

namespace headcap::db {

// The entry that undo takes back, or redo brings back, of one person's; each is the latest that is
// not reversed yet, and redo ends at their next change.
[[nodiscard]] std::optional<std::int64_t> undoCandidate(Connection& connection,
                                                        const std::optional<std::string>& who);
[[nodiscard]] std::optional<std::int64_t> redoCandidate(Connection& connection,
                                                        const std::optional<std::string>& who);

struct Reversal {
    core::EntryKind kind; // undo or redo
    core::Instant at;
    std::optional<core::Id<core::Person>> who{};
    int schemaVersion = 0;
};

[[nodiscard]] tl::expected<EntryRow, core::Refusal> reverseEntry(RecordedTransaction& transaction,
                                                                 std::int64_t sequence,
                                                                 const Reversal& reversal,
                                                                 core::IdSource& keys);

} // namespace headcap::db
