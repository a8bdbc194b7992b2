// Why an inverted change set could not be applied, as a refusal. Inside of undo.
#pragma once

#include "core/record/stores.h"
#include "db/sqlite/recorded_transaction.h"

namespace headcap::db {

[[nodiscard]] core::Refusal refusalFor(Connection& connection, const core::JournalEntry& entry,
                                       const ApplyConflict& conflict);

} // namespace headcap::db
