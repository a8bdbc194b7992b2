// Lines and edges as nature makes them: broken again and again between their ends; and how far a
// place is from one.
#pragma once

#include <vector>

#include <QPointF>
#include <QPolygonF>

#include "demo-data/pictures/base/noise.h"

namespace headcap::demo {

// From the one end to the other, wandering by `wander` of each stretch.
[[nodiscard]] QPolygonF brokenLine(const QPointF& from, const QPointF& to, double wander,
                                   Seed seed);
// The same round a polygon.
[[nodiscard]] QPolygonF brokenRing(const QPolygonF& corners, double wander, Seed seed);

struct Nearness {
    double distance = 0; // below nothing on the left of the line
    double along = 0;    // 0 at its beginning, 1 at its end
};
[[nodiscard]] Nearness nearnessTo(const QPolygonF& line, const QPointF& at);

} // namespace headcap::demo
