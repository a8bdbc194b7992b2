// Cells side by side, parted into slabs between their lines where that is wanted: what paragraphs,
// facts, lists, table rows and captions come down to.
#pragma once

#include <cstddef>
#include <vector>

#include "app/print/layout/paginate.h"
#include "app/print/layout/set_text.h"

namespace headcap::app::print {

struct Cell {
    double left = 0;
    SetText text; // all cells of a row have one leading
};

struct RowStyle {
    double leading = 14;
    double padAbove = 0;
    double padBelow = 0;
    std::size_t wholeUpTo = 3;  // lines: no page break within
    std::size_t keptAtEnds = 2; // lines that stay together before and after a break
};

[[nodiscard]] std::vector<Slab> rowSlabs(const std::vector<Cell>& cells, const RowStyle& style);

// Adds slabs, the first with its gap above.
void append(Flow& flow, std::vector<Slab> slabs, double gap, bool onGrid = true);

void noteSigns(Flow& flow, const QString& signs);

} // namespace headcap::app::print
