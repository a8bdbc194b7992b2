// What kind of file system a folder is on, and whether SQLite's locks can be trusted there.
// Source: proc(5), /proc/self/mountinfo.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace headcap::db {

// The type of the mount that holds the path, from the text of mountinfo; empty where none does.
[[nodiscard]] std::string fileSystemIn(std::string_view mountinfo, std::string_view path);

[[nodiscard]] std::string fileSystemOf(const std::filesystem::path& path);

// Several machines may write there, and each knows of its own locks alone.
[[nodiscard]] bool isNetworkFileSystem(std::string_view type);

} // namespace headcap::db
