// Tab-separated outside data with a header line, read where they lie.
#pragma once

#include <fstream>
#include <optional>
#include <string>
#include <vector>

namespace headcap::core {

using ReferenceRows = std::vector<std::vector<std::string>>;

// The rows below the header, padded to its columns; nothing where the file is absent.
inline std::optional<ReferenceRows> referenceRows(const std::string& path) {
    std::ifstream file(std::string(HEADCAP_REFERENCE_DIR) + "/" + path);
    if (!file) {
        return std::nullopt;
    }
    ReferenceRows rows;
    for (std::string line; std::getline(file, line);) {
        std::vector<std::string> cells(1);
        for (const char c : line) {
            if (c == '\t') {
                cells.emplace_back();
            } else {
                cells.back() += c;
            }
        }
        rows.push_back(std::move(cells));
    }
    const std::size_t columns = rows.empty() ? 0 : rows.front().size();
    for (auto& row : rows) {
        row.resize(columns);
    }
    rows.erase(rows.begin(), rows.empty() ? rows.begin() : rows.begin() + 1);
    return rows;
}

} // namespace headcap::core

#define HEADCAP_REFERENCE_OR_SKIP(rows, path)                                                      \
    const auto rows = ::headcap::core::referenceRows(path);                                        \
    if (!rows) {                                                                                   \
        GTEST_SKIP() << "no outside data: " << HEADCAP_REFERENCE_DIR << "/" << (path);             \
    }
