#pragma once

#include "core/record/workshops.h"
#include "db/files/file_store.h"
#include "db/sqlite/job_index.h"
#include "db/sqlite/journal.h"
#include "db/sqlite/migrations.h"
#include "db/sqlite/record_store.h"
#include "db/sqlite/search_index.h"
#include "db/sqlite/upkeep.h"
#include "db/workshop.h"

namespace headcap::db {

class SqliteOpenWorkshop final : public core::OpenWorkshop {
public:
    // Of a folder that was checked, its database at the newest schema, by the connection that will
    // write.
    SqliteOpenWorkshop(const std::filesystem::path& folder, const core::Clock& clock,
                       const WorkshopSettings& settings, std::unique_ptr<Connection> writing,
                       int schemaVersion);
    ~SqliteOpenWorkshop() override;

    [[nodiscard]] core::Stores stores() override {
        return {m_records, m_jobs, m_journal, m_search, m_files, m_upkeep};
    }

private:
    void makeBackup(core::Instant now);

    ConnectionSettings m_connections;
    Readers m_readers;
    Writer m_writer;
    Kept m_kept;
    SqliteRecordStore m_records;
    SqliteJobIndex m_jobs;
    SqliteJournal m_journal;
    SqliteSearchIndex m_search;
    FolderFileStore m_files;
    SqliteUpkeep m_upkeep;
    std::thread m_background{}; // the automatic backup
};

// Opens a folder with these schema steps, which a test may choose.
[[nodiscard]] std::unique_ptr<core::OpenWorkshop> openWorkshop(const std::filesystem::path& folder,
                                                               const core::Clock& clock,
                                                               const WorkshopSettings& settings,
                                                               std::span<const Migration> steps);

[[nodiscard]] std::unique_ptr<core::OpenWorkshop>
createWorkshop(const std::filesystem::path& folder, const core::Clock& clock,
               const WorkshopSettings& settings, std::span<const Migration> steps);

} // namespace headcap::db
