// The files of a workshop as a whole: counted, and copied to another folder by what it lacks.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace headcap::db {

struct ShelfCopy {
    std::int64_t copied = 0;
    std::int64_t alreadyThere = 0;
    std::int64_t bytes = 0;
    std::vector<std::string> altered{}; // names whose bytes are not those of their digest
    bool wasStopped = false;
};

// "photos/ab/abcd….jpg" and so on, of all three shelves, in order.
[[nodiscard]] std::vector<std::filesystem::path>
filesOnShelves(const std::filesystem::path& folder);

// Copies what `to` lacks, each file checked against its name and synced. What fails the check is
// not copied, and is named. `goOn` is asked before each file. What is there by its name and length
// is left alone; but the files of one share, those whose digest begins with this digit of sixteen,
// are read again, and where one has rotted it is copied anew.
[[nodiscard]] ShelfCopy copyShelves(const std::filesystem::path& from,
                                    const std::filesystem::path& to,
                                    const std::function<bool(std::int64_t done)>& goOn,
                                    std::optional<char> readAgain = std::nullopt);

// Removes what writings cut off left behind, where it is old enough to be nobody's.
void removeLeftovers(const std::filesystem::path& folder);

} // namespace headcap::db
