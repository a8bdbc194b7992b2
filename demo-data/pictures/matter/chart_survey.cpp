#include "demo-data/pictures/matter/chart_survey.h"

#include <algorithm>
#include <cmath>

namespace headcap::demo {
namespace {

constexpr double kPi = 3.14159265358979;

void addIslands(Chart& chart, int way, double edge, Seed seed) {
    Dice dice{mixed(seed, 8)};
    for (int i = 0, made = 0; i < 60 && made < 9; ++i) {
        const double radius = chart.box.height() * (made < 2 ? 0.055 : dice.between(0.008, 0.026));
        const QPointF at{edge + way * chart.box.width() * dice.between(0.5, 0.94),
                         chart.box.top() + chart.box.height() * dice.between(0.1, 0.9)};
        if (isOpenSea(chart, at, radius * 2.2) && !chart.land.contains(at)) {
            chart.land.addPath(island(at, radius, mixed(seed, static_cast<Seed>(50 + i))));
            ++made;
        }
    }
}

} // namespace

QPainterPath island(const QPointF& middle, double radius, Seed seed) {
    QPainterPath path;
    constexpr int kSteps = 90;
    const Noise rough{seed, 0.55};
    const Noise fine{mixed(seed, 1), 0.16};
    for (int i = 0; i <= kSteps; ++i) {
        const double a = 2 * kPi * (i % kSteps) / kSteps;
        const double x = std::cos(a);
        const double y = std::sin(a);
        const double r = radius * (1 + 0.42 * static_cast<double>(rough.at(x + 3, y + 3)) +
                                   0.14 * static_cast<double>(fine.at(x + 3, y + 3)));
        const QPointF at = middle + QPointF{x * r * 1.35, y * r};
        i == 0 ? path.moveTo(at) : path.lineTo(at);
    }
    path.closeSubpath();
    return path;
}

bool isOpenSea(const Chart& chart, const QPointF& at, double room) {
    return std::ranges::none_of(chart.taken, [&](const QRectF& box) {
        return box.adjusted(-room, -room, room, room).contains(at);
    });
}

double reachOfLand(const Chart& chart, double y, Seed seed) {
    const double tall = chart.box.height();
    const auto part = [&](Seed salt, double cell) {
        return static_cast<double>(Noise{mixed(seed, salt), tall * cell}.at(7.0 * salt, y));
    };
    // The river's inlet, with bends of its own.
    const double off = (y - chart.mouth) / (tall * 0.022) + 0.5 * part(6, 0.02);
    return chart.box.width() *
           (0.40 + 0.15 * part(1, 0.34) + 0.085 * part(2, 0.12) + 0.035 * part(3, 0.045) +
            0.012 * part(4, 0.016) + 0.005 * part(5, 0.006) - 0.22 * std::exp(-off * off));
}

Chart surveyed(const Json& map, const QSizeF& leaf, Seed seed) {
    Chart chart;
    const double margin = std::min(leaf.width(), leaf.height()) * 0.085;
    chart.box = QRectF(QPointF{}, leaf).adjusted(margin, margin, -margin, -margin);
    const bool fromLeft = map.value("land_left", true);
    const QRectF& box = chart.box;
    chart.mouth =
        box.top() + box.height() * (0.3 + 0.25 * static_cast<double>(chanceAt(seed, 3, 3)));
    chart.rose = {box.left() + box.width() * (fromLeft ? 0.76 : 0.24),
                  box.top() + box.height() * 0.60};
    chart.ship = {chart.rose.x() + (fromLeft ? 0.02 : -0.17) * box.width(),
                  box.top() + box.height() * 0.77, box.width() * 0.14, box.width() * 0.125};
    chart.cartouche = {box.left() + box.width() * (fromLeft ? 0.66 : 0.03),
                       box.top() + box.height() * 0.045, box.width() * 0.31, box.height() * 0.25};
    const double rose = box.height() * 0.12;
    chart.taken = {chart.ship, chart.cartouche,
                   QRectF(chart.rose.x() - rose, chart.rose.y() - rose, 2 * rose, 2 * rose)};
    const double edge = fromLeft ? box.left() : box.right();
    const int way = fromLeft ? 1 : -1;
    QPainterPath coast(QPointF{edge, box.top()});
    constexpr int kSteps = 1100;
    for (int i = 0; i <= kSteps; ++i) {
        const double y = box.top() + box.height() * i / kSteps;
        const double x = edge + way * reachOfLand(chart, y, seed);
        coast.lineTo(x, y);
        if (i % 92 == 60) {
            chart.towns.push_back({x - way * box.width() * 0.012, y});
        }
    }
    coast.lineTo(edge, box.bottom());
    coast.closeSubpath();
    chart.land = coast;
    addIslands(chart, way, edge, seed);
    return chart;
}

} // namespace headcap::demo
