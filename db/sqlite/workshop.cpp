#include "db/workshop.h"

#include "db/sqlite/open_workshop.h"

namespace headcap::db {

SqliteWorkshops::SqliteWorkshops(const core::Clock& clock, WorkshopSettings settings)
    : m_clock(clock), m_settings(std::move(settings)) {}

std::unique_ptr<core::OpenWorkshop> SqliteWorkshops::open(const std::filesystem::path& folder) {
    return openWorkshop(folder, m_clock, m_settings, migrations());
}

std::unique_ptr<core::OpenWorkshop> SqliteWorkshops::create(const std::filesystem::path& folder) {
    return createWorkshop(folder, m_clock, m_settings, migrations());
}

void SqliteWorkshops::restore(const std::filesystem::path& backup,
                              const std::filesystem::path& folder) {
    restoreWorkshop(backup, folder, m_settings);
}

} // namespace headcap::db
