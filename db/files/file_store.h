// Photographs, attachments and issued reports in their folders, each named by its SHA-256:
// photos/ab/abcd….jpg. A file is never written over; the same bytes are kept once.
#pragma once

#include <array>
#include <string_view>

#include "core/record/stores.h"

namespace headcap::db {

inline constexpr std::array<std::string_view, 3> kShelfFolders{"photos", "attachments", "reports"};

class FolderFileStore final : public core::FileStore {
public:
    explicit FolderFileStore(std::filesystem::path folder) : m_folder(std::move(folder)) {}

    core::Digest put(Shelf shelf, std::span<const std::byte> bytes,
                     std::string_view suffix) override;
    [[nodiscard]] std::filesystem::path pathOf(Shelf shelf,
                                               const core::Digest& digest) const override;
    [[nodiscard]] bool has(Shelf shelf, const core::Digest& digest) const override;
    [[nodiscard]] std::filesystem::path cacheFolder() const override;

    // The bytes of another file, over what is altered; false where they are not those of the
    // digest.
    [[nodiscard]] bool putCopy(Shelf shelf, const core::Digest& digest,
                               const std::filesystem::path& from, std::string_view suffix);

    [[nodiscard]] std::optional<std::filesystem::path> find(Shelf shelf,
                                                            const core::Digest& digest) const;

private:
    std::filesystem::path m_folder;
};

} // namespace headcap::db
