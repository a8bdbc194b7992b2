#include "db/sqlite/replay.h"

#include <algorithm>

#include "db/sqlite/session.h"
#include "db/sqlite/write_transaction.h"

namespace headcap::db {
namespace {

constexpr std::int64_t kEntriesAtOnce = 1'000;

void bringSchemaTo(Connection& connection, std::span<const Migration> steps, std::int64_t version) {
    for (const Migration& step : steps) {
        if (step.version <= version && step.version > schemaVersionOf(connection)) {
            changeSchema(connection, step);
        }
    }
}

// False: the change set does not fit, and nothing of it was done.
bool doAgain(Connection& connection, std::span<const Migration> steps, const EntryRow& entry) {
    bringSchemaTo(connection, steps, entry.schemaVersion);
    connection.run("SAVEPOINT entry");
    const bool isDone =
        !applyChangeSet(connection, entry.changes, [](std::string_view) { return true; });
    if (isDone) {
        insertEntry(connection, entry);
    } else {
        connection.run("ROLLBACK TO entry");
    }
    connection.run("RELEASE entry");
    return isDone;
}

} // namespace

std::int64_t replayJournal(Connection& connection, std::span<const Migration> steps,
                           const NextEntry& next) {
    connection.run("PRAGMA foreign_keys = OFF");
    if (schemaVersionOf(connection) == 0) {
        WriteTransaction transaction(connection);
        // The journal begins with the entry of the step that made it.
        bringSchemaTo(connection, steps, std::min(2, newestVersion(steps)));
        transaction.commit();
    }
    JournalHead head = journalHead(connection);
    std::int64_t done = 0;
    for (bool goesOn = true; goesOn;) {
        WriteTransaction transaction(connection);
        for (std::int64_t i = 0; i < kEntriesAtOnce && goesOn; ++i) {
            const auto entry = next(head);
            goesOn = entry && hashOf(*entry, head.hash) == entry->hash &&
                     doAgain(connection, steps, *entry);
            if (goesOn) {
                head = {entry->sequence, entry->hash};
                ++done;
            }
        }
        transaction.commit();
    }
    connection.run("PRAGMA foreign_keys = ON");
    return done;
}

} // namespace headcap::db
