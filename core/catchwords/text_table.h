// A table as a person or a spreadsheet writes it: tab-separated, a header line, columns by name in
// any order, unknown columns passed over, short lines read as if the rest were empty. A byte order
// mark, CRLF line ends and empty lines at the end are borne. Cells are views into the text.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

namespace headcap::core {

class TextTable {
public:
    explicit TextTable(std::string_view text);

    [[nodiscard]] bool hasHeader() const { return !m_header.empty() && !m_header[0].empty(); }
    [[nodiscard]] std::size_t rowCount() const { return m_rows.size(); }
    [[nodiscard]] std::optional<std::size_t> column(std::string_view name) const;
    // Empty where the row is too short.
    [[nodiscard]] std::string_view cell(std::size_t row, std::size_t column) const;
    [[nodiscard]] std::string_view cell(std::size_t row, std::optional<std::size_t> column) const {
        return column ? cell(row, *column) : std::string_view{};
    }

private:
    std::vector<std::string_view> m_header;
    std::vector<std::vector<std::string_view>> m_rows;
};

} // namespace headcap::core
