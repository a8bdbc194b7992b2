// Doing again what a journal says, entry by entry as it was written: the same rows, the same
// hashes, the changes of schema where they came.
#pragma once

#include <functional>
#include <optional>
#include <span>

#include "db/sqlite/journal_sql.h"
#include "db/sqlite/migrations.h"

namespace headcap::db {

// The entry after this head, or nothing.
using NextEntry = std::function<std::optional<EntryRow>(const JournalHead& head)>;

// As long as entries come and each is proved by the hash of the one before; how many. The search
// index is left for whoever is done. Foreign keys are off during it.
[[nodiscard]] std::int64_t replayJournal(Connection& connection, std::span<const Migration> steps,
                                         const NextEntry& next);

} // namespace headcap::db
