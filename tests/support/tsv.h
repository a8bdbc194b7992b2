// Tab-separated tables for tests: a header line, then rows; no quoting. Cells are found by the name
// of their column; a missing cell is empty.
#pragma once

#include <fstream>
#include <string>
#include <string_view>
#include <vector>

namespace headcap::tests {

class Tsv {
public:
    // Empty where the file can't be opened.
    static Tsv read(const std::string& path) {
        Tsv out;
        std::ifstream file(path);
        std::string line;
        while (std::getline(file, line)) {
            if (!line.empty() && line.back() == '\r') {
                line.pop_back();
            }
            (out.m_header.empty() ? out.m_header : out.m_rows.emplace_back()) = cells(line);
        }
        return out;
    }

    [[nodiscard]] std::size_t size() const { return m_rows.size(); }

    [[nodiscard]] std::string cell(std::size_t row, std::string_view column) const {
        for (std::size_t i = 0; i < m_header.size(); ++i) {
            if (m_header[i] == column && i < m_rows[row].size()) {
                return m_rows[row][i];
            }
        }
        return {};
    }

private:
    static std::vector<std::string> cells(const std::string& line) {
        std::vector<std::string> out(1);
        for (const char c : line) {
            if (c == '\t') {
                out.emplace_back();
            } else {
                out.back().push_back(c);
            }
        }
        return out;
    }

    std::vector<std::string> m_header;
    std::vector<std::vector<std::string>> m_rows;
};

} // namespace headcap::tests
