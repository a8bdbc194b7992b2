// Workshops on the disk: a folder with one SQLite database and the files its records name
// (DESIGN, "The workshop folder"). Everything in it is readable by its user only.
#pragma once

#include <chrono>
#include <functional>
#include <string>

#include "core/record/workshops.h"
#include "core/values/time.h"

namespace headcap::db {

struct WorkshopSettings {
    // How long a write waits while another program writes, before it is refused as busy.
    std::chrono::milliseconds patience{5'000};
    // A copy of the database in backups/ when the workshop is opened and the newest is over a day
    // old; the newest ten are kept.
    bool makesBackups = true;
    // A file system of SQLite's, by name; empty: its own.
    std::string vfs{};
    // What kind of file system a folder is on, by the system's name for it.
    std::function<std::string(const std::filesystem::path&)> fileSystemOf{};
};

class SqliteWorkshops final : public core::Workshops {
public:
    explicit SqliteWorkshops(const core::Clock& clock, WorkshopSettings settings = {});

    [[nodiscard]] std::unique_ptr<core::OpenWorkshop>
    open(const std::filesystem::path& folder) override;
    [[nodiscard]] std::unique_ptr<core::OpenWorkshop>
    create(const std::filesystem::path& folder) override;
    bool restore(const std::filesystem::path& backup, const std::filesystem::path& folder,
                 const core::Progress& progress) override;
    [[nodiscard]] core::SalvageReport salvage(const std::filesystem::path& damaged,
                                              const std::filesystem::path& folder,
                                              const std::vector<std::filesystem::path>& backups,
                                              const core::Progress& progress) override;

private:
    const core::Clock& m_clock;
    WorkshopSettings m_settings;
};

} // namespace headcap::db
