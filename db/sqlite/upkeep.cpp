#include "db/sqlite/upkeep.h"

#include "db/sqlite/search_sql.h"
#include "db/sqlite/write_transaction.h"

namespace headcap::db {

core::VerifyReport SqliteUpkeep::verify(const core::Progress&) const {
    return {};
}

core::BackupReport SqliteUpkeep::backup(const std::filesystem::path& folder,
                                        const core::Progress&) {
    return {folder};
}

std::optional<core::Instant> SqliteUpkeep::lastOutsideBackup() const {
    const auto reader = m_kept.readers.lend();
    Query query(*reader, "SELECT value FROM meta WHERE name = 'last_outside_backup'");
    return query.step() ? core::instantFromIso(query.text(0)) : std::nullopt;
}

void SqliteUpkeep::rebuildSearch() {
    m_kept.writer.run([](Connection& connection) {
        WriteTransaction transaction(connection);
        rebuildSearchIndex(connection);
        transaction.commit();
    });
}

} // namespace headcap::db
