// The coast that a chart is drawn from: mainland with its inlet, islands, towns, and what of the
// sheet is taken by title, rose and ship. The same for the same seed.
#pragma once

#include <vector>

#include <QPainterPath>
#include <QPointF>
#include <QRectF>
#include <QSizeF>

#include "demo-data/loader/moment.h"
#include "demo-data/pictures/base/noise.h"

namespace headcap::demo {

struct Chart {
    QRectF box;        // within its border
    QPainterPath land; // mainland and islands
    std::vector<QPointF> towns;
    double mouth = 0; // of the river
    QPointF rose;
    QRectF ship;
    QRectF cartouche;
    std::vector<QRectF> taken; // by rose, ship and cartouche
};

[[nodiscard]] Chart surveyed(const Json& map, const QSizeF& leaf, Seed seed);
// A ragged ring of land, or of sand.
[[nodiscard]] QPainterPath island(const QPointF& middle, double radius, Seed seed);
// How far the land reaches from the sheet's edge.
[[nodiscard]] double reachOfLand(const Chart& chart, double y, Seed seed);
// A place that title, rose and ship leave free.
[[nodiscard]] bool isOpenSea(const Chart& chart, const QPointF& at, double room);

} // namespace headcap::demo
