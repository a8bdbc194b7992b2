#include "db/sqlite/folder_check.h"

#include <array>

#include <fcntl.h>
#include <unistd.h>

#include "core/record/stores.h"
#include "db/files/file_system.h"
#include "db/sqlite/file_glance.h"

namespace headcap::db {
namespace {

namespace fs = std::filesystem;
using core::StoreError;
using Code = core::StoreError::Code;

void refuseNetworkFolder(const fs::path& folder, const WorkshopSettings& settings) {
    const std::string type =
        settings.fileSystemOf ? settings.fileSystemOf(folder) : fileSystemOf(folder);
    if (isNetworkFileSystem(type)) {
        throw StoreError(Code::networkFolder,
                         folder.string() + " is on a network file system (" + type +
                             "), where two machines would not see each other's locks");
    }
}

bool canWrite(const fs::path& path) {
    return ::faccessat(AT_FDCWD, path.c_str(), W_OK, AT_EACCESS) == 0;
}

} // namespace

void checkCanOpen(const fs::path& folder, const WorkshopSettings& settings,
                  std::span<const Migration> steps) {
    const fs::path database = folder / kDatabaseName;
    std::error_code error;
    if (!fs::exists(database, error)) {
        throw StoreError(Code::missing,
                         "there is no " + std::string{kDatabaseName} + " in " + folder.string());
    }
    if (!fs::is_regular_file(database, error)) {
        throw StoreError(Code::notAWorkshop, database.string() + " is not a file");
    }
    refuseNetworkFolder(folder, settings);
    if (fs::file_size(database, error) == 0) {
        throw StoreError(Code::truncated, database.string() + " is empty");
    }
    const auto glance = glanceAt(database);
    if (!glance) {
        throw StoreError(Code::notAWorkshop, database.string() + " is not a database of ours");
    }
    if (glance->applicationId != static_cast<std::uint32_t>(kApplicationId)) {
        throw StoreError(Code::notAWorkshop,
                         database.string() + " is a database of another program");
    }
    if (glance->isCutShort) {
        throw StoreError(Code::truncated, database.string() + " has been cut short");
    }
    const int newest = newestVersion(steps);
    if (glance->userVersion > static_cast<std::uint32_t>(newest)) {
        throw StoreError(Code::newerProgram,
                         "the workshop has schema " + std::to_string(glance->userVersion) +
                             ", and this program knows up to " + std::to_string(newest));
    }
    // A database in WAL mode can't even be read where files can't be made beside it.
    if (!canWrite(folder) || !canWrite(database)) {
        throw StoreError(Code::readOnly, folder.string() + " can't be written to");
    }
}

void checkCanCreate(const fs::path& folder, const WorkshopSettings& settings) {
    std::error_code error;
    if (!fs::exists(folder, error)) {
        return;
    }
    if (!fs::is_directory(folder, error)) {
        throw StoreError(Code::ioFailed, folder.string() + " is not a folder");
    }
    refuseNetworkFolder(folder, settings);
    if (!canWrite(folder)) {
        throw StoreError(Code::readOnly, folder.string() + " can't be written to");
    }
    for (const auto& entry : fs::directory_iterator(folder)) {
        // What a making that was cut off left behind is ours.
        if (!entry.path().filename().string().starts_with(".new-")) {
            throw StoreError(Code::ioFailed, folder.string() + " is not empty");
        }
    }
}

} // namespace headcap::db
