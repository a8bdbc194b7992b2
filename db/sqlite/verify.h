// Whether a workshop is sound, told in sentences: the database by SQLite's own check, the search
// index by FTS5's and against the records, the chain of the journal, every record against its
// last entry, every file against its digest, the ledger against itself.
#pragma once

#include "core/record/stores.h"
#include "db/files/file_store.h"
#include "db/sqlite/connection.h"

namespace headcap::db {

// All of it reads one state of the workshop, while others write on.
[[nodiscard]] core::VerifyReport verifyWorkshop(Connection& connection,
                                                const FolderFileStore& files,
                                                const core::Progress& progress);

// FTS5's check is a write that writes nothing.
[[nodiscard]] std::optional<core::VerifyFinding> verifySearchIndex(Connection& writing);

} // namespace headcap::db
