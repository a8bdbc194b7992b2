#include "core/catchwords/page_table.h"

#include <fmt/format.h>

namespace headcap::core {
namespace {

std::optional<bool> yesOrNo(std::string_view text) {
    if (text == "yes" || text == "true" || text == "1")
        return true;
    if (text == "no" || text == "false" || text == "0")
        return false;
    return std::nullopt;
}

} // namespace

std::string nameOfRow(std::span<const PageRow> pages, std::size_t row) {
    const bool isNamed = row >= 1 && row <= pages.size() && !pages[row - 1].name.empty();
    return isNamed ? std::string(pages[row - 1].name) : fmt::format("row {}", row);
}

std::optional<PageTableError> checkPageColumns(const TextTable& table) {
    if (!table.hasHeader())
        return PageTableError{PageTableProblem::noHeader};
    for (const std::string_view name : {"page_n", "signature", "catchword", "first_words"}) {
        if (!table.column(name))
            return PageTableError{PageTableProblem::columnMissing, name};
    }
    return std::nullopt;
}

std::vector<PagesOfBook> readPages(const TextTable& table) {
    const auto book = table.column("book");
    const auto number = table.column("page_n");
    const auto signature = table.column("signature");
    const auto catchword = table.column("catchword");
    const auto firstWords = table.column("first_words");
    const auto before = table.column("words_before_catchword");
    const auto head = table.column("running_head");
    const auto runsOn = table.column("runs_on");
    std::vector<PagesOfBook> books;
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        const std::string_view name = table.cell(row, book);
        if (books.empty() || books.back().book != name)
            books.push_back({name, {}});
        books.back().pages.push_back({.number = table.cell(row, number),
                                      .signature = table.cell(row, signature),
                                      .catchword = table.cell(row, catchword),
                                      .firstWords = table.cell(row, firstWords),
                                      .wordsBefore = table.cell(row, before),
                                      .runningHead = table.cell(row, head),
                                      .runsOn = yesOrNo(table.cell(row, runsOn))});
    }
    return books;
}

} // namespace headcap::core
