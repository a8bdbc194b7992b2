#include "app/print/layout/row_slabs.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace headcap::app::print {

namespace {

Slab lineSlab(const std::vector<Cell>& cells, const RowStyle& style, std::size_t from,
              std::size_t to, double above) {
    Slab slab;
    slab.height = above + static_cast<double>(to - from) * style.leading;
    const double up = static_cast<double>(from) * style.leading - above;
    for (const Cell& cell : cells) {
        for (std::size_t i = from; i < std::min(to, cell.text.lines.size()); ++i) {
            slab.marks.push_back(moved(cell.text.lines[i], {cell.left, -up}));
        }
    }
    return slab;
}

} // namespace

std::vector<Slab> rowSlabs(const std::vector<Cell>& cells, const RowStyle& style) {
    std::size_t count = 1;
    for (const Cell& cell : cells) {
        count = std::max(count, cell.text.lines.size());
    }
    std::vector<Slab> slabs;
    if (count <= style.wholeUpTo) {
        slabs.push_back(lineSlab(cells, style, 0, count, style.padAbove));
    } else {
        for (std::size_t i = 0; i < count; ++i) {
            slabs.push_back(lineSlab(cells, style, i, i + 1, i == 0 ? style.padAbove : 0));
            const std::size_t done = i + 1;
            slabs.back().keepWithNext =
                done < count && (done < style.keptAtEnds || count - done < style.keptAtEnds);
        }
    }
    slabs.back().height += style.padBelow;
    return slabs;
}

void append(Flow& flow, std::vector<Slab> slabs, double gap, bool onGrid) {
    if (slabs.empty()) {
        return;
    }
    slabs.front().gap = gap;
    slabs.front().onGrid = onGrid;
    std::move(slabs.begin(), slabs.end(), std::back_inserter(flow.slabs));
}

void noteSigns(Flow& flow, const QString& signs) {
    addOnce(flow.signsWithoutFace, signs);
}

} // namespace headcap::app::print
