// Everything in a folder: names, bytes and modes, to see that nothing changed.
#pragma once

#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <string>

namespace headcap::test {

inline std::string bytesOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

inline void writeBytes(const std::filesystem::path& file, const std::string& bytes) {
    std::ofstream(file, std::ios::binary | std::ios::trunc) << bytes;
}

inline std::map<std::string, std::string> everythingIn(const std::filesystem::path& folder) {
    std::map<std::string, std::string> all;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        all[std::filesystem::relative(entry.path(), folder).string()] =
            entry.is_regular_file() ? bytesOf(entry.path()) : "folder";
    }
    return all;
}

} // namespace headcap::test
