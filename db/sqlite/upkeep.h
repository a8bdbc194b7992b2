#pragma once

#include "core/record/stores.h"
#include "db/files/file_store.h"
#include "db/sqlite/record_store.h"

namespace headcap::db {

class SqliteUpkeep final : public core::Upkeep {
public:
    SqliteUpkeep(Kept& kept, const FolderFileStore& files, std::filesystem::path folder,
                 ConnectionSettings connections)
        : m_kept(kept), m_files(files), m_folder(std::move(folder)),
          m_connections(std::move(connections)) {}

    [[nodiscard]] core::VerifyReport verify(const core::Progress& progress) const override;
    core::BackupReport backup(const std::filesystem::path& folder,
                              const core::Progress& progress) override;
    [[nodiscard]] std::optional<core::Instant> lastOutsideBackup() const override;
    void rebuildSearch() override;
    [[nodiscard]] std::filesystem::path folder() const override { return m_folder; }

private:
    Kept& m_kept;
    const FolderFileStore& m_files;
    std::filesystem::path m_folder;
    ConnectionSettings m_connections;
};

} // namespace headcap::db
