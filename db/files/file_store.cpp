#include "db/files/file_store.h"

#include "db/files/disk_errors.h"
#include "db/files/durable_file.h"

namespace headcap::db {
namespace {

namespace fs = std::filesystem;
using Shelf = core::FileStore::Shelf;

// What is looked for by name, before the folder is read through.
constexpr std::array<std::string_view, 5> kUsualSuffixes{".jpg", ".pdf", ".png", ".tif", ".jpeg"};

fs::path folderFor(const fs::path& workshop, Shelf shelf, const std::string& hex) {
    return workshop / kShelfFolders[static_cast<std::size_t>(shelf)] / hex.substr(0, 2);
}

// ".jpg" from "JPG", ".Jpg"; nothing where it is no suffix.
std::string tidied(std::string_view suffix) {
    std::string tidy;
    for (const char c : suffix) {
        const char low = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        if ((low >= 'a' && low <= 'z') || (low >= '0' && low <= '9')) {
            tidy += low;
        } else if (low != '.' || !tidy.empty()) {
            return {};
        }
    }
    return tidy.empty() || tidy.size() > 8 ? std::string{} : '.' + tidy;
}

} // namespace

core::Digest FolderFileStore::put(Shelf shelf, std::span<const std::byte> bytes,
                                  std::string_view suffix) {
    const core::Digest digest = core::sha256(bytes);
    if (const auto kept = find(shelf, digest)) {
        const auto size = onDisk([&] { return fs::file_size(*kept); });
        if (size == bytes.size() && digestOfFile(*kept) == digest) {
            return digest;
        }
        // Damaged since: the right bytes take its place.
        writeDurably(*kept, bytes);
        return digest;
    }
    const std::string hex = digest.hex();
    const fs::path folder = folderFor(m_folder, shelf, hex);
    makeFolder(folder);
    writeDurably(folder / (hex + tidied(suffix)), bytes);
    return digest;
}

bool FolderFileStore::putCopy(Shelf shelf, const core::Digest& digest, const fs::path& from,
                              std::string_view suffix) {
    const auto kept = find(shelf, digest);
    const std::string hex = digest.hex();
    const fs::path folder = folderFor(m_folder, shelf, hex);
    makeFolder(folder);
    return copyDurably(from, kept.value_or(folder / (hex + tidied(suffix))), digest).has_value();
}

std::optional<fs::path> FolderFileStore::find(Shelf shelf, const core::Digest& digest) const {
    const std::string hex = digest.hex();
    const fs::path folder = folderFor(m_folder, shelf, hex);
    std::error_code error;
    for (const std::string_view suffix : kUsualSuffixes) {
        fs::path usual = folder / (hex + std::string{suffix});
        if (fs::exists(usual, error)) {
            return usual;
        }
    }
    return onDisk([&]() -> std::optional<fs::path> {
        for (const auto& entry : fs::directory_iterator(folder, error)) {
            if (entry.path().filename().string().starts_with(hex)) {
                return entry.path();
            }
        }
        return std::nullopt;
    });
}

fs::path FolderFileStore::pathOf(Shelf shelf, const core::Digest& digest) const {
    if (auto path = find(shelf, digest)) {
        return *std::move(path);
    }
    throw core::StoreError(core::StoreError::Code::fileMissing,
                           digest.hex() + " is not in " +
                               std::string{kShelfFolders[static_cast<std::size_t>(shelf)]});
}

bool FolderFileStore::has(Shelf shelf, const core::Digest& digest) const {
    return find(shelf, digest).has_value();
}

fs::path FolderFileStore::cacheFolder() const {
    fs::path folder = m_folder / "thumbs";
    makeFolder(folder);
    return folder;
}

} // namespace headcap::db
