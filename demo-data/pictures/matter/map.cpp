// A sea-chart, engraved: a coast with its hatching, islands, hills, soundings, rhumb lines, a
// compass rose, a title in a cartouche; coloured in outline by hand.
#include <algorithm>
#include <cmath>
#include <vector>

#include "demo-data/pictures/matter/chart_survey.h"
#include "demo-data/pictures/matter/matter.h"
#include "demo-data/pictures/matter/ornament.h"
#include "demo-data/pictures/matter/type.h"

namespace headcap::demo {
namespace {

constexpr double kPi = 3.14159265358979;

void drawLadder(QPainter& painter, const QRectF& box) {
    const QColor ink = painter.pen().color();
    const double band = box.height() * 0.011;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink, 0.28));
    painter.drawRect(box);
    painter.drawRect(box.adjusted(-band, -band, band, band));
    painter.setPen(QPen(ink, 0.7));
    painter.drawRect(box.adjusted(-band - 1.6, -band - 1.6, band + 1.6, band + 1.6));
    constexpr int kAcross = 36;
    constexpr int kDown = 26;
    for (int i = 0; i < kAcross; i += 2) {
        const double x = box.left() + box.width() * i / kAcross;
        painter.fillRect(QRectF(x, box.top() - band, box.width() / kAcross, band), ink);
        painter.fillRect(QRectF(x, box.bottom(), box.width() / kAcross, band), ink);
    }
    for (int i = 0; i < kDown; i += 2) {
        const double y = box.top() + box.height() * i / kDown;
        painter.fillRect(QRectF(box.left() - band, y, band, box.height() / kDown), ink);
        painter.fillRect(QRectF(box.right(), y, band, box.height() / kDown), ink);
    }
}

// Hatched seaward; what falls on the land is taken off the plate again.
void drawCoast(QPainter& painter, const Chart& chart) {
    const QColor ink = painter.pen().color();
    QPainterPathStroker band;
    band.setWidth(chart.box.height() * 0.022);
    painter.save();
    painter.setClipPath(band.createStroke(chart.land));
    painter.setClipRect(chart.box, Qt::IntersectClip);
    painter.setPen(QPen(ink, 0.13));
    for (double y = chart.box.top(); y < chart.box.bottom(); y += chart.box.height() * 0.0027) {
        painter.drawLine(QPointF{chart.box.left(), y}, QPointF{chart.box.right(), y});
    }
    painter.restore();
    painter.save();
    painter.setClipRect(chart.box);
    painter.fillPath(chart.land, Qt::black);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink, 0.34, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(chart.land);
    painter.restore();
}

void drawRhumbs(QPainter& painter, const Chart& chart) {
    painter.save();
    painter.setClipRect(chart.box);
    painter.setPen(QPen(painter.pen().color(), 0.10));
    const double far = chart.box.width() * 1.5;
    for (int i = 0; i < 32; ++i) {
        const double a = 2 * kPi * i / 32;
        painter.drawLine(chart.rose, chart.rose + QPointF{std::cos(a), std::sin(a)} * far);
    }
    painter.restore();
}

// The river from the inlet to the plate's edge, two banks that draw together.
void drawRiver(QPainter& painter, const Json& map, const Chart& chart, Seed seed) {
    const bool left = map.value("land_left", true);
    const double edge = left ? chart.box.left() : chart.box.right();
    const double mouth = edge + (left ? 1 : -1) * reachOfLand(chart, chart.mouth, seed);
    const Noise bends{mixed(seed, 12), chart.box.height() * 0.07};
    painter.setPen(QPen(painter.pen().color(), 0.26));
    painter.setBrush(Qt::NoBrush);
    for (const int bank : {-1, 1}) {
        QPainterPath line;
        constexpr int kSteps = 120;
        for (int i = 0; i <= kSteps; ++i) {
            const double t = static_cast<double>(i) / kSteps;
            const double x = mouth + (edge - mouth) * t;
            const double wide = chart.box.height() * 0.006 * (1 - t) + 0.25;
            const double y = chart.mouth + bank * wide + chart.box.height() * 0.06 * t +
                             chart.box.height() * 0.05 * static_cast<double>(bends.at(x, 3)) *
                                 std::min(1.0, 5 * t);
            i == 0 ? line.moveTo(x, y) : line.lineTo(x, y);
        }
        painter.drawPath(line);
    }
}

// Sands that dry: dotted round, and stippled.
void drawSands(QPainter& painter, const Chart& chart, Seed seed) {
    Dice dice{mixed(seed, 35)};
    const QColor ink = painter.pen().color();
    for (int i = 0, made = 0; i < 60 && made < 9; ++i) {
        const double radius = chart.box.height() * dice.between(0.018, 0.05);
        const QPointF at{chart.box.left() + chart.box.width() * dice.between(0.1, 0.9),
                         chart.box.top() + chart.box.height() * dice.between(0.06, 0.94)};
        if (!isOpenSea(chart, at, radius * 1.6) || chart.land.contains(at) ||
            chart.land.intersects(
                QRectF(at - QPointF{radius, radius} * 1.4, QSizeF{radius, radius} * 2.8))) {
            continue;
        }
        ++made;
        const QPainterPath bank = island(at, radius, mixed(seed, static_cast<Seed>(200 + i)));
        QPen dots(ink, 0.3, Qt::CustomDashLine, Qt::RoundCap);
        dots.setDashPattern({0.1, 3.2});
        painter.setPen(dots);
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(bank);
        for (int k = 0; k < static_cast<int>(radius * radius * 4); ++k) {
            const QPointF grain =
                at + QPointF{dice.between(-1.6, 1.6), dice.between(-1.3, 1.3)} * radius;
            if (bank.contains(grain)) {
                painter.fillRect(QRectF(grain, QSizeF{0.24, 0.24}), ink);
            }
        }
    }
}

void drawTrees(QPainter& painter, const Chart& chart, Seed seed) {
    const QColor ink = painter.pen().color();
    Dice dice{mixed(seed, 25)};
    const Noise wood{mixed(seed, 26), chart.box.height() * 0.13};
    const double size = chart.box.height() * 0.0065;
    painter.setPen(QPen(ink, 0.12));
    painter.setBrush(Qt::NoBrush);
    for (int i = 0; i < 1500; ++i) {
        const QPointF at{chart.box.left() + chart.box.width() * dice.roll(),
                         chart.box.top() + chart.box.height() * dice.between(0.02, 0.98)};
        if (wood.at(at.x(), at.y()) > 0.25F && chart.land.contains(at) &&
            chart.land.contains(at + QPointF{size * 3, 0}) &&
            chart.land.contains(at - QPointF{size * 3, 0})) {
            painter.drawEllipse(at, size * 0.62, size * 0.72);
            painter.drawLine(at + QPointF{0, size * 0.7}, at + QPointF{0, size * 1.5});
            painter.drawLine(at + QPointF{size * 0.3, -size * 0.3},
                             at + QPointF{size * 0.3, size * 0.4});
        }
    }
}

void drawHills(QPainter& painter, const Chart& chart, Seed seed) {
    const QColor ink = painter.pen().color();
    Dice dice{mixed(seed, 20)};
    const double size = chart.box.height() * 0.017;
    const Noise range{mixed(seed, 21), chart.box.height() * 0.16};
    for (int i = 0; i < 900; ++i) {
        const QPointF at{chart.box.left() + chart.box.width() * dice.roll(),
                         chart.box.top() + chart.box.height() * dice.between(0.03, 0.97)};
        const bool inland = chart.land.contains(at + QPointF{size * 2, 0}) &&
                            chart.land.contains(at - QPointF{size * 2, 0}) &&
                            chart.land.contains(at + QPointF{0, size * 1.5});
        if (!inland || range.at(at.x(), at.y()) < 0.10F) {
            continue;
        }
        const double s = size * dice.between(0.7, 1.25);
        QPainterPath hill(at + QPointF{-s, 0});
        hill.quadTo(at + QPointF{-s * 0.3, -s * 1.25}, at + QPointF{0, -s * 1.1});
        hill.quadTo(at + QPointF{s * 0.5, -s * 0.9}, at + QPointF{s, 0});
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(ink, 0.16));
        painter.drawPath(hill);
        painter.setPen(QPen(ink, 0.10));
        for (int k = 0; k < 7; ++k) {
            const double x = s * (0.08 + 0.12 * k);
            painter.drawLine(at + QPointF{x, -s * (1.05 - 0.14 * k)},
                             at + QPointF{x + s * 0.12, -s * 0.08});
        }
    }
}

void drawSoundings(QPainter& painter, const Chart& chart, Seed seed) {
    const Face face{chart.box.height() * 0.0125, true, false, 0};
    Dice dice{mixed(seed, 30)};
    std::vector<QPointF> sounded;
    for (int i = 0; i < 260; ++i) {
        const QPointF at{chart.box.left() + chart.box.width() * dice.between(0.02, 0.97),
                         chart.box.top() + chart.box.height() * dice.between(0.03, 0.97)};
        const int fathoms = static_cast<int>(dice.between(3, 48));
        const bool apart = std::ranges::none_of(sounded, [&](const QPointF& other) {
            return std::hypot(other.x() - at.x(), other.y() - at.y()) < face.size * 3;
        });
        if (apart && !chart.land.contains(at) && isOpenSea(chart, at, 6)) {
            painter.fillPath(setLine(QString::number(fathoms), face, at.x(), at.y(), 3),
                             painter.pen().color());
            sounded.push_back(at);
        }
    }
}

void drawNames(QPainter& painter, const Json& map, const Chart& chart) {
    if (!map.contains("places")) {
        return;
    }
    const Face face{chart.box.height() * 0.0175, true, false, 0};
    const bool left = map.value("land_left", true);
    std::size_t next = 0;
    for (const QPointF& town : chart.towns) {
        const auto name = withLongS(QString::fromStdString(
            map.at("places")[next++ % map.at("places").size()].get<std::string>()));
        const double x =
            left ? town.x() - widthOf(name, face) - face.size * 0.6 : town.x() + face.size * 0.6;
        painter.fillPath(
            setLine(name, face, x, town.y() + face.size * 0.3, static_cast<Seed>(next)),
            painter.pen().color());
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(painter.pen().color(), 0.2));
        painter.drawEllipse(town, face.size * 0.16, face.size * 0.16);
    }
}

// The names of sea and land, in wide letters.
void drawWideName(QPainter& painter, const QString& name, const Face& face, const QPointF& middle,
                  double turn) {
    painter.save();
    painter.translate(middle);
    painter.rotate(turn);
    painter.fillPath(setLine(name, face, -widthOf(name, face) / 2, 0, 6), painter.pen().color());
    painter.restore();
}

void drawLeagues(QPainter& painter, const Chart& chart, bool left) {
    const QColor ink = painter.pen().color();
    const double length = chart.box.width() * 0.17;
    const double x = left ? chart.box.right() - chart.box.width() * 0.38
                          : chart.box.left() + chart.box.width() * 0.21;
    const double y = chart.box.bottom() - chart.box.height() * 0.045;
    painter.setPen(QPen(ink, 0.2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(x, y, length, 1.6));
    for (int i = 0; i < 6; i += 2) {
        painter.fillRect(QRectF(x + length * i / 6, y, length / 6, 1.6), ink);
    }
    const Face face{chart.box.height() * 0.0135, true, false, 0};
    const QString words = QStringLiteral("A Scale of Three Leagues");
    painter.fillPath(setLine(words, face, x + (length - widthOf(words, face)) / 2, y - 1.4, 8),
                     ink);
}

void drawCartouche(QPainter& painter, const Json& map, const QRectF& box, Seed seed) {
    const QColor ink = painter.pen().color();
    painter.fillRect(box.adjusted(-2, -2, 2, 2), Qt::black);
    const double band = box.height() * 0.14;
    drawArabesque(painter, {box.left(), box.top(), box.width(), band}, mixed(seed, 41));
    drawArabesque(painter, {box.left(), box.bottom() - band, box.width(), band}, mixed(seed, 42));
    painter.setPen(QPen(ink, 0.5));
    painter.setBrush(Qt::NoBrush);
    const QRectF inner = box.adjusted(1.5, band * 1.1, -1.5, -band * 1.1);
    painter.drawRect(inner);
    painter.setPen(QPen(ink, 0.18));
    painter.drawRect(inner.adjusted(0.9, 0.9, -0.9, -0.9));
    double y = inner.top() + inner.height() * 0.27;
    bool first = true;
    for (const Json& line : map.at("cartouche")) {
        const auto text = withLongS(QString::fromStdString(line.get<std::string>()));
        Face face{inner.height() * (first ? 0.185 : 0.125), !first, false, first ? 0.3 : 0};
        const double most = inner.width() * 0.9;
        const double width = widthOf(text, face);
        face.size *= width > most ? most / width : 1;
        painter.fillPath(setLine(text, face, inner.center().x() - widthOf(text, face) / 2, y, 9),
                         ink);
        y += inner.height() * 0.215;
        first = false;
    }
}

void drawWash(QPainter& painter, const Chart& chart) {
    painter.setClipPath(chart.land);
    painter.setClipRect(chart.box, Qt::IntersectClip);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(QColor(198, 212, 160), chart.box.height() * 0.030));
    painter.drawPath(chart.land);
    painter.setPen(QPen(QColor(158, 184, 124), chart.box.height() * 0.011));
    painter.drawPath(chart.land);
}

} // namespace

void drawMap(QPainter& painter, const Json& map, const QSizeF& leaf, Ink ink, Seed seed) {
    const Chart chart = surveyed(map, leaf, seed);
    const QColor colour = painter.pen().color();
    if (ink == Ink::wash) {
        drawWash(painter, chart);
        painter.setClipping(false);
        const double band = chart.box.height() * 0.011;
        painter.setPen(QPen(QColor(232, 205, 128), band));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(chart.box.adjusted(-band / 2, -band / 2, band / 2, band / 2));
        return;
    }
    if (ink != Ink::black) {
        return;
    }
    const bool left = map.value("land_left", true);
    const auto part = [&](auto&& draw) {
        painter.save();
        painter.setPen(colour);
        draw();
        painter.restore();
    };
    const QRectF& box = chart.box;
    part([&] { drawRhumbs(painter, chart); });
    part([&] { drawCoast(painter, chart); });
    part([&] { drawRiver(painter, map, chart, seed); });
    part([&] { drawHills(painter, chart, seed); });
    part([&] { drawTrees(painter, chart, seed); });
    part([&] { drawSands(painter, chart, seed); });
    part([&] { drawSoundings(painter, chart, seed); });
    part([&] { drawNames(painter, map, chart); });
    part([&] {
        const double x = box.left() + box.width() * (left ? 0.56 : 0.44);
        drawWideName(painter, textOf(map, "sea"),
                     {box.height() * 0.034, true, false, box.height() * 0.014},
                     {x, box.top() + box.height() * 0.46}, left ? -64 : 64);
        const double inland = box.left() + box.width() * (left ? 0.13 : 0.87);
        drawWideName(painter, textOf(map, "land"),
                     {box.height() * 0.030, false, false, box.height() * 0.012},
                     {inland, box.top() + box.height() * 0.80}, 0);
    });
    part([&] { drawCompassRose(painter, chart.rose, box.height() * 0.105); });
    part([&] { drawLadder(painter, box); });
    part([&] { drawCartouche(painter, map, chart.cartouche, seed); });
    part([&] { drawLeagues(painter, chart, left); });
    part([&] { drawShip(painter, chart.ship); });
    const Face number{chart.box.height() * 0.02, false, false, 0};
    const QString plate = textOf(map, "plate");
    part([&] {
        painter.fillPath(setLine(plate, number, chart.box.right() - widthOf(plate, number),
                                 chart.box.top() - chart.box.height() * 0.022, 4),
                         colour);
    });
}

} // namespace headcap::demo
