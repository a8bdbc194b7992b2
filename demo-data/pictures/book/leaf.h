// A leaf of a book: its paper, what is printed or written on it, and what has happened to it.
// Before and after treatment it is the same leaf.
#pragma once

#include <string>

#include "demo-data/loader/moment.h"
#include "demo-data/pictures/base/surface.h"

namespace headcap::demo {

struct LeafView {
    const Json& leaf;
    Seed seed;
    bool isTreated = false;
};

[[nodiscard]] QSizeF leafSize(const Json& leaf);
[[nodiscard]] QPointF pointOf(const Json& pair);

// The leaf, or a window of it, with its own light on it.
[[nodiscard]] Surface drawLeaf(const LeafView& view, const QRectF& window, double pixelsPerMm);

// The steps of it, in their order.
void makePaper(Surface& surface, const LeafView& view);
void printMatter(Surface& surface, const LeafView& view);
void age(Surface& surface, const LeafView& view);

} // namespace headcap::demo
