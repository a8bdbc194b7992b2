// What was read from the pages of a book in the order in which they are bound: a row a page, as
// typed or as a table gives it. Rows count from 1.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/catchwords/text_table.h"

namespace headcap::core {

struct PageRow {
    std::string_view number;    // as printed; may be empty or wrong
    std::string_view signature; // as printed; mostly empty
    std::string_view catchword;
    std::string_view firstWords;
    std::string_view wordsBefore = {}; // before the catchword
    std::string_view runningHead = {};
    // The collator's own reading of the text across the turn to the next page, where there is one.
    std::optional<bool> runsOn = {};
    // What sentences call it; a row's number where it is empty.
    std::string_view name = {};
    // It bears print, though nothing of it was read.
    bool isPrinted = false;
};

// "leaf 12 verso", or "row 24"; rows count from 1.
[[nodiscard]] std::string nameOfRow(std::span<const PageRow> pages, std::size_t row);

struct PagesOfBook {
    std::string_view book; // empty where the table has no such column
    std::vector<PageRow> pages;
};

enum class PageTableProblem { noHeader, columnMissing };

struct PageTableError {
    PageTableProblem problem = PageTableProblem::noHeader;
    std::string_view column = {}; // the first of those missing

    friend bool operator==(const PageTableError&, const PageTableError&) = default;
};

// The columns page_n, signature, catchword and first_words are wanted; words_before_catchword,
// running_head, runs_on ("yes", "no") and book are read where they stand. A book's rows follow one
// another. The views point into the table's text.
[[nodiscard]] std::optional<PageTableError> checkPageColumns(const TextTable& table);
[[nodiscard]] std::vector<PagesOfBook> readPages(const TextTable& table);

} // namespace headcap::core
