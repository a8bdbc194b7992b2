// Files that are on the disk when we say so: written beside their place, synced, and given their
// name in one step, the folder synced after. Readable by their user only.
#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <span>
#include <string>

#include "core/values/digest.h"

namespace headcap::db {

// With its parents, each synced into its own; mode 0700. Throws StoreError.
void makeFolder(const std::filesystem::path& folder);

// An empty file of mode 0600, where there is none.
void makePrivateFile(const std::filesystem::path& file);

// Puts the bytes at `file`, whole or not at all, over what was there.
void writeDurably(const std::filesystem::path& file, std::span<const std::byte> bytes);

// The same from another file, piece by piece; how many bytes. Nothing is put there where the
// bytes are not those of the digest.
[[nodiscard]] std::optional<std::int64_t> copyDurably(const std::filesystem::path& from,
                                                      const std::filesystem::path& to,
                                                      const std::optional<core::Digest>& expected);

void syncFile(const std::filesystem::path& file);
void syncFolder(const std::filesystem::path& folder);
// Renames within a folder, and syncs it.
void renameDurably(const std::filesystem::path& from, const std::filesystem::path& to);

[[nodiscard]] core::Digest digestOfFile(const std::filesystem::path& file);

} // namespace headcap::db
