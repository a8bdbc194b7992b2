// What a damaged database tells beyond the last entry that its journal proves: entries that can
// be read but not proved, done again under their own sentence, and rows of which no entry tells.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "db/sqlite/damaged_database.h"
#include "db/sqlite/migrations.h"

namespace headcap::db {

struct SalvagedRecords {
    std::int64_t putBack = 0;
    std::vector<std::string> lost{}; // sentences
};

// Into a workshop at the newest schema that has all up to `proved` of the damaged one's journal.
[[nodiscard]] SalvagedRecords salvageRecords(DamagedDatabase& damaged, Connection& into,
                                             const JournalHead& proved, core::Instant now);

} // namespace headcap::db
