// The schema in its versions: numbered SQL files, each applied once, in one transaction.
#pragma once

#include <cstdint>
#include <functional>
#include <span>
#include <string>
#include <vector>

#include "core/values/embedded_file.h"
#include "core/values/time.h"
#include "db/sqlite/connection.h"

namespace headcap::db {

// "HdCp", in the header of every workshop's database.
inline constexpr std::int32_t kApplicationId = 0x48644370;

struct Migration {
    int version;
    std::string name;
    std::string sql;
};

// From files named NNNN_lower_case.sql. A gap or a double is our own mistake.
[[nodiscard]] std::vector<Migration> migrationsFrom(std::span<const EmbeddedFile> files);

// Those built into the program.
[[nodiscard]] const std::vector<Migration>& migrations();
[[nodiscard]] int newestVersion(std::span<const Migration> steps);

[[nodiscard]] std::int64_t schemaVersionOf(Connection& connection);

// One step's change of schema and nothing else: within a write transaction, foreign keys off.
// Throws StoreError migrationFailed.
void changeSchema(Connection& connection, const Migration& step);

// Brings the database to the newest version. `before` is called once, when there is a step to
// take and there was a schema already. A step that fails leaves the database at the version
// before it, and throws StoreError migrationFailed.
void migrate(Connection& connection, std::span<const Migration> steps, core::Instant now,
             const std::function<void()>& before);

} // namespace headcap::db
