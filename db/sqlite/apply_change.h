// Whether a change may be made, and the making of it: revisions, what is permanent, keys and
// names. All of the change is done, or none.
#pragma once

#include "core/record/change.h"
#include "db/sqlite/recorded_transaction.h"

namespace headcap::db {

struct Applied {
    std::optional<EntryRow> entry{}; // nothing where all of it was so already
    core::Revision revision{};
};

// Whether a record may be written again so: of what is permanent, only a step, and only to strike
// it.
[[nodiscard]] bool mayBecome(const core::AnyRecord& before, const core::AnyRecord& after);

// Made again, a change that was made already is harmless: it gives the revision of its records.
[[nodiscard]] tl::expected<Applied, core::Refusal>
applyChange(RecordedTransaction& transaction, const core::Change& change, core::Instant now);

} // namespace headcap::db
