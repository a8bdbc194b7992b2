#include "db/sqlite/migrations.h"

#include <charconv>

#include <sqlite3.h>

#include "core/record/stores.h"
#include "core/values/contract.h"
#include "db/sqlite/journal_sql.h"
#include "db/sqlite/write_transaction.h"

namespace headcap {
std::vector<EmbeddedFile> migrationFiles();
}

namespace headcap::db {
namespace {

std::int64_t number(Connection& connection, const std::string& sql) {
    Query query(connection, sql);
    return query.step() ? query.number(0) : 0;
}

[[noreturn]] void fail(const Migration& step, const std::string& why) {
    throw core::StoreError(core::StoreError::Code::migrationFailed, step.name + ": " + why);
}

void noteInJournal(Connection& connection, const Migration& step, core::Instant now) {
    if (number(connection, "SELECT count(*) FROM sqlite_schema WHERE name = 'journal'") == 0) {
        return;
    }
    EntryRow entry;
    entry.at = core::isoText(now);
    entry.kind = entryKindName(core::EntryKind::migration);
    entry.sentence = "Schema brought to version " + std::to_string(step.version);
    entry.schemaVersion = step.version;
    appendEntry(connection, entry);
}

void take(Connection& connection, const Migration& step, core::Instant now) {
    // Outside a transaction, or it is no more than a word.
    connection.run("PRAGMA foreign_keys = OFF");
    {
        WriteTransaction transaction(connection);
        // Another window may have taken the step while we waited.
        if (schemaVersionOf(connection) >= step.version) {
            transaction.rollBack();
        } else {
            changeSchema(connection, step);
            noteInJournal(connection, step, now);
            transaction.commit();
        }
    }
    connection.run("PRAGMA foreign_keys = ON");
}

} // namespace

std::int64_t schemaVersionOf(Connection& connection) {
    return number(connection, "PRAGMA user_version");
}

void changeSchema(Connection& connection, const Migration& step) {
    if (connection.tryRun(step.sql) != SQLITE_OK) {
        fail(step, connection.message());
    }
    if (sqlite3_get_autocommit(connection.handle()) != 0) {
        fail(step, "it ended its own transaction");
    }
    connection.run("PRAGMA user_version = " + std::to_string(step.version));
    connection.run("PRAGMA application_id = " + std::to_string(kApplicationId));
    if (const auto broken = number(connection, "SELECT count(*) FROM pragma_foreign_key_check");
        broken > 0) {
        fail(step, std::to_string(broken) + " records would name what is not there");
    }
}

std::vector<Migration> migrationsFrom(std::span<const EmbeddedFile> files) {
    std::vector<Migration> steps;
    for (const EmbeddedFile& file : files) {
        int version = 0;
        const auto read = std::from_chars(file.name.data(), file.name.data() + 4, version);
        HEADCAP_CONTRACT(read.ec == std::errc{} && version == static_cast<int>(steps.size()) + 1);
        steps.push_back({version, std::string{file.name}, std::string{file.text}});
    }
    return steps;
}

const std::vector<Migration>& migrations() {
    static const auto kSteps = migrationsFrom(migrationFiles());
    return kSteps;
}

int newestVersion(std::span<const Migration> steps) {
    return steps.empty() ? 0 : steps.back().version;
}

void migrate(Connection& connection, std::span<const Migration> steps, core::Instant now,
             const std::function<void()>& before) {
    const std::int64_t version = schemaVersionOf(connection);
    if (version >= newestVersion(steps)) {
        return;
    }
    if (version > 0) {
        before();
    }
    for (const Migration& step : steps) {
        if (step.version > version) {
            take(connection, step, now);
        }
    }
    connection.run("PRAGMA wal_checkpoint(TRUNCATE)");
}

} // namespace headcap::db
