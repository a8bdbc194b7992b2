#include "demo-data/pictures/book/leaf.h"

namespace headcap::demo {

QSizeF leafSize(const Json& leaf) {
    const QPointF size = pointOf(leaf.at("size"));
    return {size.x(), size.y()};
}

QPointF pointOf(const Json& pair) {
    return {pair.at(0).get<double>(), pair.at(1).get<double>()};
}

Surface drawLeaf(const LeafView& view, const QRectF& window, double pixelsPerMm) {
    Surface surface{window, pixelsPerMm};
    makePaper(surface, view);
    printMatter(surface, view);
    age(surface, view);
    surface.light();
    return surface;
}

} // namespace headcap::demo
