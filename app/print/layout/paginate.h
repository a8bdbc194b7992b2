// Page breaks: slabs that can't be parted, one below the other, dealt out to pages. Knows nothing
// of text; lengths are points.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "app/print/layout/marks.h"

namespace headcap::app::print {

struct Slab {
    double height = 0;
    double gap = 0;            // above it, but not at the head of a page
    bool onGrid = false;       // begins on a half line of the grid, the gap growing to meet it
    bool keepWithNext = false; // no page ends with it
    double overhang = 0;       // how far its side matter hangs down beside the slabs after it
    bool clearsSide = false;   // begins below side matter still hanging
    std::optional<std::size_t> head; // in Flow::heads: repeated above it on a new page
    std::vector<Mark> marks;         // from its own top left
    std::optional<Entry> entry;
};

struct Flow {
    std::vector<Slab> slabs;
    std::vector<Slab> heads; // of tables; the first one stands among the slabs
    double figureShare = 1;  // of the size that photographs may have
    QString signsWithoutFace;
};

struct Span {
    double top = 0;
    double bottom = 0;
};

// Where a slab or a repeated head stands.
struct Placed {
    std::size_t index = 0; // in Flow::slabs or Flow::heads
    bool repeatedHead = false;
    std::size_t page = 0;
    double top = 0;
};

// Each slab once, in order. A chain of kept slabs moves to the next page together, unless it is
// longer than a page: then it is parted where the page is full.
[[nodiscard]] std::vector<Placed> paginate(const Flow& flow, Span firstPage, Span otherPages);

} // namespace headcap::app::print
