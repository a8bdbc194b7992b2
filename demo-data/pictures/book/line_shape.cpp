#include "demo-data/pictures/book/line_shape.h"

#include <algorithm>
#include <cmath>

namespace headcap::demo {
namespace {

void breakBetween(const QPointF& a, const QPointF& b, double wander, int depth, Dice& dice,
                  QPolygonF& line) {
    const QPointF way = b - a;
    if (depth == 0 || std::hypot(way.x(), way.y()) < 0.5) {
        line << b;
        return;
    }
    const QPointF across{-way.y(), way.x()};
    const QPointF middle =
        (a + b) / 2 + across * (dice.between(-1, 1) * wander) + way * dice.between(-0.12, 0.12);
    breakBetween(a, middle, wander, depth - 1, dice, line);
    breakBetween(middle, b, wander, depth - 1, dice, line);
}

} // namespace

QPolygonF brokenLine(const QPointF& from, const QPointF& to, double wander, Seed seed) {
    Dice dice{seed};
    QPolygonF line;
    line << from;
    breakBetween(from, to, wander, 6, dice, line);
    return line;
}

QPolygonF brokenRing(const QPolygonF& corners, double wander, Seed seed) {
    Dice dice{seed};
    QPolygonF ring;
    for (qsizetype i = 0; i < corners.size(); ++i) {
        if (i == 0) {
            ring << corners[0];
        }
        breakBetween(corners[i], corners[(i + 1) % corners.size()], wander, 5, dice, ring);
    }
    return ring;
}

Nearness nearnessTo(const QPolygonF& line, const QPointF& at) {
    Nearness nearest{1e9, 0};
    for (qsizetype i = 0; i + 1 < line.size(); ++i) {
        const QPointF way = line[i + 1] - line[i];
        const QPointF off = at - line[i];
        const double length = QPointF::dotProduct(way, way);
        const double t =
            length > 0 ? std::clamp(QPointF::dotProduct(off, way) / length, 0.0, 1.0) : 0;
        const QPointF gap = off - way * t;
        const double distance = std::hypot(gap.x(), gap.y());
        if (distance < std::abs(nearest.distance)) {
            const bool left = way.x() * off.y() - way.y() * off.x() < 0;
            nearest = {left ? -distance : distance,
                       (static_cast<double>(i) + t) / static_cast<double>(line.size() - 1)};
        }
    }
    return nearest;
}

} // namespace headcap::demo
