#pragma once

#include "core/record/safe_keeping.h"
#include "db/files/file_store.h"
#include "db/sqlite/record_store.h"
#include "db/workshop.h"

namespace headcap::db {

// The database in a folder of backups. Not the name of a workshop's own, so that nobody works in a
// backup by mistake.
inline constexpr const char* kBackupName = "backup.sqlite";

class SqliteUpkeep final : public core::Upkeep, public core::SafeKeeping {
public:
    SqliteUpkeep(Kept& kept, FolderFileStore& files, std::filesystem::path folder,
                 WorkshopSettings settings)
        : m_kept(kept), m_files(files), m_folder(std::move(folder)),
          m_settings(std::move(settings)) {}

    [[nodiscard]] core::VerifyReport verify(const core::Progress& progress) const override;
    core::BackupReport backup(const std::filesystem::path& folder,
                              const core::Progress& progress) override;
    [[nodiscard]] std::optional<core::Instant> lastOutsideBackup() const override;
    [[nodiscard]] std::optional<core::Instant> lastInsideBackup() const override;
    [[nodiscard]] std::optional<std::filesystem::path> outsideFolder() const override;
    [[nodiscard]] std::optional<core::Instant> firstWork() const override;
    bool restore(const std::filesystem::path& backup, const std::filesystem::path& folder,
                 const core::Progress& progress) override;
    core::MendReport mendFiles(const std::filesystem::path& from,
                               const core::Progress& progress) override;
    void rebuildSearch() override;
    [[nodiscard]] std::filesystem::path folder() const override { return m_folder; }

private:
    core::BackupReport backUp(const std::filesystem::path& folder, const core::Progress& progress);
    void noteOutsideBackup(const std::filesystem::path& folder);

    Kept& m_kept;
    FolderFileStore& m_files;
    std::filesystem::path m_folder;
    WorkshopSettings m_settings;
};

// A new workshop from a backup, every file checked against its name. What is damaged in the backup
// is left out, and named in the StoreError fileAltered that is thrown when all else is there.
// False: stopped, and nothing is there.
bool restoreWorkshop(const std::filesystem::path& backup, const std::filesystem::path& folder,
                     const WorkshopSettings& settings, const core::Progress& progress);

} // namespace headcap::db
