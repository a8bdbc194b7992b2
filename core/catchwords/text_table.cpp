#include "core/catchwords/text_table.h"

#include <algorithm>

namespace headcap::core {
namespace {

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && (text.front() == ' ' || text.front() == '\r'))
        text.remove_prefix(1);
    while (!text.empty() && (text.back() == ' ' || text.back() == '\r'))
        text.remove_suffix(1);
    return text;
}

std::vector<std::string_view> split(std::string_view line) {
    std::vector<std::string_view> cells;
    while (true) {
        const std::size_t tab = line.find('\t');
        cells.push_back(trimmed(line.substr(0, tab)));
        if (tab == std::string_view::npos)
            return cells;
        line.remove_prefix(tab + 1);
    }
}

} // namespace

TextTable::TextTable(std::string_view text) {
    constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
    if (text.starts_with(kByteOrderMark))
        text.remove_prefix(kByteOrderMark.size());
    bool first = true;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        auto cells = split(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        if (first)
            m_header = std::move(cells);
        else
            m_rows.push_back(std::move(cells));
        first = false;
    }
    // A line without a tab and without a word at the end of the file is no row.
    while (!m_rows.empty() && m_rows.back().size() == 1 && m_rows.back().front().empty())
        m_rows.pop_back();
}

std::optional<std::size_t> TextTable::column(std::string_view name) const {
    const auto found = std::ranges::find(m_header, name);
    if (found == m_header.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - m_header.begin());
}

std::string_view TextTable::cell(std::size_t row, std::size_t column) const {
    return column < m_rows[row].size() ? m_rows[row][column] : std::string_view{};
}

} // namespace headcap::core
