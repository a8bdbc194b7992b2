#include "db/sqlite/open_workshop.h"

#include <cstdio>

#include <sqlite3.h>

#include "core/values/contract.h"
#include "db/files/durable_file.h"
#include "db/files/shelves.h"
#include "db/sqlite/backup.h"
#include "db/sqlite/folder_check.h"

namespace headcap::db {
namespace {

namespace fs = std::filesystem;

ConnectionSettings connectionSettings(const WorkshopSettings& settings) {
    return {settings.patience, settings.vfs};
}

// A broken schema shows at the first statement that reads it.
void lookInside(Connection& connection) {
    Query query(connection, "SELECT count(*) FROM sqlite_schema");
    query.step();
}

// The database made whole under another name, so that a making cut off leaves no half workshop.
void makeDatabase(const fs::path& folder, const core::Clock& clock,
                  const WorkshopSettings& settings, std::span<const Migration> steps) {
    const fs::path making = folder / (".new-" + std::string{kDatabaseName});
    for (const char* suffix : {"", "-wal", "-shm"}) {
        fs::remove(making.string() + suffix);
    }
    makePrivateFile(making);
    {
        Connection connection(making, Access::write, connectionSettings(settings));
        connection.run("PRAGMA page_size = 4096");
        connection.run("PRAGMA journal_mode = WAL");
        migrate(connection, steps, clock.now(), [] {});
    }
    syncFile(making);
    renameDurably(making, folder / kDatabaseName);
}

} // namespace

SqliteOpenWorkshop::SqliteOpenWorkshop(const fs::path& folder, const core::Clock& clock,
                                       const WorkshopSettings& settings,
                                       std::unique_ptr<Connection> writing, int schemaVersion)
    : m_connections(connectionSettings(settings)), m_readers(folder / kDatabaseName, m_connections),
      m_writer(std::move(writing)), m_kept{clock, m_writer, m_readers, schemaVersion},
      m_records(m_kept,
                std::make_unique<Connection>(folder / kDatabaseName, Access::read, m_connections)),
      m_jobs(m_readers), m_journal(m_kept), m_search(m_readers), m_files(folder),
      m_upkeep(m_kept, m_files, folder, settings) {
    if (settings.makesBackups) {
        m_background = std::thread([this, now = clock.now()] { makeBackup(now); });
    }
}

SqliteOpenWorkshop::~SqliteOpenWorkshop() {
    if (m_background.joinable()) {
        m_background.join();
    }
}

void SqliteOpenWorkshop::makeBackup(core::Instant now) {
    try {
        backUpByRule(*m_readers.lend(), m_upkeep.folder(), now);
        removeLeftovers(m_upkeep.folder());
    } catch (const std::exception& error) {
        // The workshop can be used without; what is wrong with the disk shows where it matters.
        std::fprintf(stderr, "the automatic backup was not made: %s\n", error.what());
    }
}

std::unique_ptr<core::OpenWorkshop> openWorkshop(const fs::path& folder, const core::Clock& clock,
                                                 const WorkshopSettings& settings,
                                                 std::span<const Migration> steps) {
    // Session and preupdate hook are chosen when SQLite is built, and nothing works without.
    HEADCAP_CONTRACT(sqlite3_compileoption_used("ENABLE_SESSION") == 1);
    HEADCAP_CONTRACT(sqlite3_threadsafe() != 0);
    const fs::path whole = fs::absolute(folder);
    checkCanOpen(whole, settings, steps);
    auto writing = std::make_unique<Connection>(whole / kDatabaseName, Access::write,
                                                connectionSettings(settings));
    lookInside(*writing);
    migrate(*writing, steps, clock.now(),
            [&] { backUpBeforeMigration(*writing, whole, clock.now()); });
    return std::make_unique<SqliteOpenWorkshop>(whole, clock, settings, std::move(writing),
                                                newestVersion(steps));
}

std::unique_ptr<core::OpenWorkshop> createWorkshop(const fs::path& folder, const core::Clock& clock,
                                                   const WorkshopSettings& settings,
                                                   std::span<const Migration> steps) {
    const fs::path whole = fs::absolute(folder);
    checkCanCreate(whole, settings);
    makeFolder(whole);
    makeDatabase(whole, clock, settings, steps);
    return openWorkshop(whole, clock, settings, steps);
}

} // namespace headcap::db
