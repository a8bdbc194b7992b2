#pragma once

#include "core/record/workshops.h"
#include "db/sqlite/migrations.h"
#include "db/workshop.h"

namespace headcap::db {

// See core::Workshops. Throws StoreError truncated where nothing at all could be saved;
// newerProgram and what checkCanCreate throws.
[[nodiscard]] core::SalvageReport
salvageWorkshop(const std::filesystem::path& damaged, const std::filesystem::path& folder,
                const std::vector<std::filesystem::path>& backups, const core::Clock& clock,
                const WorkshopSettings& settings, const core::Progress& progress);

} // namespace headcap::db
