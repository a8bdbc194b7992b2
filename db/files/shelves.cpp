#include "db/files/shelves.h"

#include <algorithm>
#include <array>
#include <chrono>

#include "db/files/durable_file.h"
#include "db/files/file_store.h"

namespace headcap::db {
namespace {

namespace fs = std::filesystem;

// Files and databases in the making.
constexpr std::array<std::string_view, 2> kLeftover{".incoming-", ".new-"};
constexpr std::size_t kDigestLength = 64;

std::string nameOf(const fs::path& file) {
    return file.filename().string();
}

// The same file, by name and length; its digest was checked when it was copied.
bool isThere(const fs::path& from, const fs::path& to) {
    std::error_code error;
    return fs::exists(to, error) && fs::file_size(to, error) == fs::file_size(from, error);
}

// What lies there is still what was copied. What can't be read is not.
bool isSound(const fs::path& file, const std::optional<core::Digest>& expected) {
    try {
        return !expected || digestOfFile(file) == *expected;
    } catch (const core::StoreError&) {
        return false;
    }
}

} // namespace

std::vector<fs::path> filesOnShelves(const fs::path& folder) {
    std::vector<fs::path> files;
    for (const std::string_view shelf : kShelfFolders) {
        std::error_code none;
        for (const auto& entry : fs::recursive_directory_iterator(folder / shelf, none)) {
            if (entry.is_regular_file() && !nameOf(entry.path()).starts_with('.')) {
                files.push_back(fs::relative(entry.path(), folder));
            }
        }
    }
    std::sort(files.begin(), files.end());
    return files;
}

ShelfCopy copyShelves(const fs::path& from, const fs::path& to,
                      const std::function<bool(std::int64_t done)>& goOn,
                      std::optional<char> readAgain) {
    ShelfCopy result;
    std::int64_t done = 0;
    for (const fs::path& file : filesOnShelves(from)) {
        if (!goOn(done++)) {
            result.wasStopped = true;
            return result;
        }
        const fs::path target = to / file;
        const auto expected = core::Digest::fromHex(nameOf(file).substr(0, kDigestLength));
        const bool isReadAgain = readAgain == nameOf(file).front();
        if (isThere(from / file, target) && (!isReadAgain || isSound(target, expected))) {
            ++result.alreadyThere;
            continue;
        }
        makeFolder(target.parent_path());
        if (const auto bytes = copyDurably(from / file, target, expected)) {
            ++result.copied;
            result.bytes += *bytes;
        } else {
            result.altered.push_back(file.string());
        }
    }
    return result;
}

void removeLeftovers(const fs::path& folder) {
    const auto dayAgo = fs::file_time_type::clock::now() - std::chrono::hours{24};
    std::vector<fs::path> old;
    std::error_code error;
    for (const auto& entry : fs::recursive_directory_iterator(folder, error)) {
        const std::string name = nameOf(entry.path());
        const bool isLeftover =
            std::any_of(kLeftover.begin(), kLeftover.end(),
                        [&](std::string_view begins) { return name.starts_with(begins); });
        if (isLeftover && entry.last_write_time(error) < dayAgo) {
            old.push_back(entry.path());
        }
    }
    for (const fs::path& path : old) {
        fs::remove(path, error);
    }
}

} // namespace headcap::db
