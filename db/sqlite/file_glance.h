// A look at a database file, and at the WAL beside it, without opening it: opening would make
// files, and closing would write the WAL back. So a workshop that is refused stays as it was.
// Source of the layouts: "Database File Format", sqlite.org/fileformat2.html, 1.3 and 4.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>

namespace headcap::db {

struct FileGlance {
    std::uint32_t applicationId = 0;
    std::uint32_t userVersion = 0;
    bool isCutShort = false; // the file is smaller than it says, and no WAL holds the rest
};

// Nothing where it is not an SQLite database. The version is that of the last transaction
// committed, which may stand in the WAL. Throws StoreError ioFailed or readOnly.
[[nodiscard]] std::optional<FileGlance> glanceAt(const std::filesystem::path& file);

} // namespace headcap::db
