#include "db/workshop.h"

#include "db/files/disk_errors.h"
#include "db/sqlite/open_workshop.h"
#include "db/sqlite/salvage.h"

namespace headcap::db {

SqliteWorkshops::SqliteWorkshops(const core::Clock& clock, WorkshopSettings settings)
    : m_clock(clock), m_settings(std::move(settings)) {}

std::unique_ptr<core::OpenWorkshop> SqliteWorkshops::open(const std::filesystem::path& folder) {
    return onDisk([&] { return openWorkshop(folder, m_clock, m_settings, migrations()); });
}

std::unique_ptr<core::OpenWorkshop> SqliteWorkshops::create(const std::filesystem::path& folder) {
    return onDisk([&] { return createWorkshop(folder, m_clock, m_settings, migrations()); });
}

bool SqliteWorkshops::restore(const std::filesystem::path& backup,
                              const std::filesystem::path& folder, const core::Progress& progress) {
    return onDisk([&] { return restoreWorkshop(backup, folder, m_settings, progress); });
}

core::SalvageReport SqliteWorkshops::salvage(const std::filesystem::path& damaged,
                                             const std::filesystem::path& folder,
                                             const std::vector<std::filesystem::path>& backups,
                                             const core::Progress& progress) {
    return onDisk(
        [&] { return salvageWorkshop(damaged, folder, backups, m_clock, m_settings, progress); });
}

} // namespace headcap::db
