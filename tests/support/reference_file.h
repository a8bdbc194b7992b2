// Outside data read where they lie: a whole file as text, or nothing where it is absent.
#pragma once

#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <string>

namespace headcap::tests {

inline std::filesystem::path referencePath(const std::string& name) {
    return std::filesystem::path(HEADCAP_REFERENCE_DIR) / name;
}

inline std::optional<std::string> readReference(const std::string& name) {
    std::ifstream file(referencePath(name), std::ios::binary);
    if (!file)
        return std::nullopt;
    return std::string(std::istreambuf_iterator<char>(file), {});
}

} // namespace headcap::tests
