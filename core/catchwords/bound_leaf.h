// Pages put together to leaves: which page is a recto, which numbers and marks a leaf bears, and
// which leaves bear no print at all (blanks, plates, covers), whose place in the gatherings only
// their neighbours can tell. Rows here count from 0.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "core/catchwords/number_on_page.h"
#include "core/catchwords/page_table.h"
#include "core/catchwords/printed_mark.h"

namespace headcap::core {

enum class Numbering { none, pages, leaves };

struct BoundLeaf {
    std::optional<std::size_t> recto; // rows
    std::optional<std::size_t> verso;
    std::array<std::optional<NumberOnPage>, 2> numbers; // printed, or supplied in brackets
    std::optional<PrintedMark> mark;
    bool unprinted = false;

    [[nodiscard]] bool printsNumber() const {
        return (numbers[0] && !numbers[0]->supplied) || (numbers[1] && !numbers[1]->supplied);
    }
    [[nodiscard]] std::size_t firstRow() const { return recto ? *recto : *verso; }
    [[nodiscard]] std::size_t lastRow() const { return verso ? *verso : *recto; }
};

struct BoundBook {
    std::span<const PageRow> pages;
    Numbering numbering = Numbering::none;
    std::vector<BoundLeaf> leaves;
};

// `printed`: leaves of the book that bear its text, in the order to be explained;
// `unprintedBefore`: how many bare leaves stand before each.
struct LeafOrder {
    std::vector<std::size_t> printed;
    std::vector<int> unprintedBefore;
};

[[nodiscard]] BoundBook bindLeaves(std::span<const PageRow> pages);

} // namespace headcap::core
