// Copies of the database, made while people work: SQLite's online backup in one step, for step by
// step it starts anew whenever somebody writes, and may never end.
//
// The rule of the automatic ones: when a workshop is opened and the newest copy in backups/ is
// over a day old, another is made; the newest ten are kept. Before a change of schema a copy is
// always made; the newest three of these are kept.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/values/time.h"
#include "db/sqlite/connection.h"
#include "db/sqlite/journal_sql.h"

namespace headcap::db {

// A copy that is put away can be read from a medium that can't be written; one that will be worked
// in has a WAL.
enum class CopyFor { keeping, working };

// Readable by its user only, on the disk when this returns, and checked by opening it; the head
// of its journal. `to` is made whole or not at all. Throws StoreError truncated where the copy is
// damaged.
JournalHead copyDatabase(Connection& from, const std::filesystem::path& to, CopyFor purpose);

// The hash of the first entry, by which two copies of one workshop know each other.
[[nodiscard]] std::string firstHash(Connection& connection);

// The automatic copies of a workshop, of both kinds, the newest first.
[[nodiscard]] std::vector<std::filesystem::path>
insideBackups(const std::filesystem::path& workshop);
// When the last was made; one that bears a time to come counts only where there is no other.
[[nodiscard]] std::optional<core::Instant> lastInsideBackup(const std::filesystem::path& workshop,
                                                            core::Instant now);

void backUpBeforeMigration(Connection& from, const std::filesystem::path& workshop,
                           core::Instant now);
// Where the rule asks for one.
void backUpByRule(Connection& from, const std::filesystem::path& workshop, core::Instant now);

} // namespace headcap::db
