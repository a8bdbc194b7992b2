// Whether a folder can be opened as a workshop, told without changing anything in it.
#pragma once

#include <filesystem>
#include <span>

#include "db/sqlite/migrations.h"
#include "db/workshop.h"

namespace headcap::db {

inline constexpr const char* kDatabaseName = "workshop.sqlite";

// Throws StoreError: missing, networkFolder, notAWorkshop, truncated, newerProgram, readOnly.
void checkCanOpen(const std::filesystem::path& folder, const WorkshopSettings& settings,
                  std::span<const Migration> steps);

// Whether a workshop may be made there: missing, or an empty folder that can be written.
void checkCanCreate(const std::filesystem::path& folder, const WorkshopSettings& settings);

} // namespace headcap::db
