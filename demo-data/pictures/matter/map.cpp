// A sea-chart, engraved: a coast with its hatching, islands, hills, soundings, rhumb lines, a
// compass rose, a title in a cartouche; coloured in outline by hand.
#include <algorithm>
#include <cmath>
#include <vector>

#include "demo-data/pictures/matter/matter.h"
#include "demo-data/pictures/matter/ornament.h"
#include "demo-data/pictures/matter/type.h"

namespace headcap::demo {
namespace {

constexpr double kPi = 3.14159265358979;

struct Chart {
    QRectF box;        // within its border
    QPainterPath land; // mainland and islands
    std::vector<QPointF> towns;
};

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

Chart surveyed(const Json& map, const QSizeF& leaf, Seed seed) {
    Chart chart;
    const double margin = std::min(leaf.width(), leaf.height()) * 0.085;
    chart.box = QRectF(QPointF{}, leaf).adjusted(margin, margin, -margin, -margin);
    const bool fromLeft = map.value("land_left", true);
    const Noise wide{mixed(seed, 1), chart.box.height() * 0.36};
    const Noise bays{mixed(seed, 2), chart.box.height() * 0.11};
    const Noise rocks{mixed(seed, 3), chart.box.height() * 0.022};
    QPainterPath coast;
    const double edge = fromLeft ? chart.box.left() : chart.box.right();
    const int way = fromLeft ? 1 : -1;
    coast.moveTo(edge, chart.box.top());
    constexpr int kSteps = 520;
    for (int i = 0; i <= kSteps; ++i) {
        const double y = chart.box.top() + chart.box.height() * i / kSteps;
        const double reach = chart.box.width() * (0.36 + 0.17 * static_cast<double>(wide.at(7, y)) +
                                                  0.085 * static_cast<double>(bays.at(9, y)) +
                                                  0.013 * static_cast<double>(rocks.at(11, y)));
        const double x = edge + way * reach;
        coast.lineTo(x, y);
        if (i % 37 == 19) {
            chart.towns.push_back({x - way * chart.box.width() * 0.012, y});
        }
    }
    coast.lineTo(edge, chart.box.bottom());
    coast.closeSubpath();
    chart.land = coast;
    Dice dice{mixed(seed, 4)};
    for (int i = 0; i < 7; ++i) {
        const double x = edge + way * chart.box.width() * dice.between(0.58, 0.93);
        const double y = chart.box.top() + chart.box.height() * dice.between(0.12, 0.88);
        const QPainterPath one = island({x, y}, chart.box.height() * dice.between(0.012, 0.055),
                                        mixed(seed, static_cast<Seed>(50 + i)));
        chart.land.addPath(one);
    }
    return chart;
}

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

void drawCoast(QPainter& painter, const Chart& chart) {
    const QColor ink = painter.pen().color();
    QPainterPathStroker band;
    band.setWidth(chart.box.height() * 0.021);
    painter.save();
    QPainterPath frame;
    frame.addRect(chart.box);
    painter.setClipPath(band.createStroke(chart.land).subtracted(chart.land).intersected(frame));
    painter.setPen(QPen(ink, 0.13));
    for (double y = chart.box.top(); y < chart.box.bottom(); y += chart.box.height() * 0.0028) {
        painter.drawLine(QPointF{chart.box.left(), y}, QPointF{chart.box.right(), y});
    }
    painter.restore();
    painter.save();
    painter.setClipRect(chart.box);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink, 0.32, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(chart.land);
    painter.restore();
}

void drawRhumbs(QPainter& painter, const Chart& chart, const QPointF& rose) {
    painter.save();
    QPainterPath sea;
    sea.addRect(chart.box);
    painter.setClipPath(sea.subtracted(chart.land));
    painter.setPen(QPen(painter.pen().color(), 0.09));
    const double far = chart.box.width() * 1.5;
    for (int i = 0; i < 32; ++i) {
        const double a = 2 * kPi * i / 32;
        painter.drawLine(rose, rose + QPointF{std::cos(a), std::sin(a)} * far);
    }
    painter.restore();
}

void drawHills(QPainter& painter, const Chart& chart, Seed seed) {
    const QColor ink = painter.pen().color();
    Dice dice{mixed(seed, 20)};
    const double size = chart.box.height() * 0.017;
    for (int i = 0; i < 420; ++i) {
        const QPointF at{chart.box.left() + chart.box.width() * dice.roll(),
                         chart.box.top() + chart.box.height() * dice.between(0.03, 0.97)};
        const Noise range{mixed(seed, 21), chart.box.height() * 0.16};
        const bool inland = chart.land.contains(at + QPointF{size * 2, 0}) &&
                            chart.land.contains(at - QPointF{size * 2, 0}) &&
                            chart.land.contains(at + QPointF{0, size * 1.5});
        if (!inland || range.at(at.x(), at.y()) < 0.12F) {
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
    for (int i = 0; i < 110; ++i) {
        const QPointF at{chart.box.left() + chart.box.width() * dice.between(0.02, 0.97),
                         chart.box.top() + chart.box.height() * dice.between(0.03, 0.97)};
        const int fathoms = static_cast<int>(dice.between(3, 48));
        if (!chart.land.contains(at)) {
            painter.fillPath(setLine(QString::number(fathoms), face, at.x(), at.y(), 3),
                             painter.pen().color());
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

QRectF cartoucheOf(const Json& map, const Chart& chart) {
    const bool left = map.value("land_left", true);
    const QSizeF size{chart.box.width() * 0.29, chart.box.height() * 0.25};
    const double x = left ? chart.box.right() - size.width() - chart.box.width() * 0.035
                          : chart.box.left() + chart.box.width() * 0.035;
    return {QPointF{x, chart.box.top() + chart.box.height() * 0.045}, size};
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
    painter.setClipRect(chart.box);
    QPainterPathStroker band;
    band.setWidth(chart.box.height() * 0.03);
    painter.fillPath(band.createStroke(chart.land).intersected(chart.land), QColor(188, 206, 150));
    QPainterPathStroker thin;
    thin.setWidth(chart.box.height() * 0.012);
    painter.fillPath(thin.createStroke(chart.land).intersected(chart.land), QColor(150, 178, 118));
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
    const QPointF rose{chart.box.left() + chart.box.width() * (left ? 0.74 : 0.26),
                       chart.box.top() + chart.box.height() * 0.66};
    const auto part = [&](auto&& draw) {
        painter.save();
        painter.setPen(colour);
        draw();
        painter.restore();
    };
    part([&] { drawRhumbs(painter, chart, rose); });
    part([&] { drawCoast(painter, chart); });
    part([&] { drawHills(painter, chart, seed); });
    part([&] { drawSoundings(painter, chart, seed); });
    part([&] { drawNames(painter, map, chart); });
    part([&] { drawCompassRose(painter, rose, chart.box.height() * 0.105); });
    part([&] { drawLadder(painter, chart.box); });
    part([&] { drawCartouche(painter, map, cartoucheOf(map, chart), seed); });
    part([&] {
        const QRectF ship{rose.x() + (left ? 0.06 : -0.20) * chart.box.width(),
                          rose.y() + chart.box.height() * 0.13, chart.box.width() * 0.13,
                          chart.box.width() * 0.12};
        drawShip(painter, ship);
    });
    const Face number{chart.box.height() * 0.02, false, false, 0};
    const QString plate = textOf(map, "plate");
    part([&] {
        painter.fillPath(setLine(plate, number, chart.box.right() - widthOf(plate, number),
                                 chart.box.top() - chart.box.height() * 0.022, 4),
                         colour);
    });
}

} // namespace headcap::demo
