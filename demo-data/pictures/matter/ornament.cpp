#include "demo-data/pictures/matter/ornament.h"

#include <array>
#include <cmath>

namespace headcap::demo {
namespace {

constexpr double kPi = 3.14159265358979;

QPointF turned(double angle, double radius) {
    return {std::cos(angle) * radius, std::sin(angle) * radius};
}

QPainterPath leafAt(const QPointF& foot, double angle, double length) {
    const QPointF tip = foot + turned(angle, length);
    QPainterPath leaf(foot);
    leaf.quadTo(foot + turned(angle - 0.55, length * 0.62), tip);
    leaf.quadTo(foot + turned(angle + 0.55, length * 0.62), foot);
    return leaf;
}

// A stem that winds in on itself, with leaves along its outer side.
void drawScroll(QPainter& p, const QPointF& middle, double radius, double start, int way,
                double weight) {
    QPainterPath stem;
    QPainterPath leaves;
    constexpr int kSteps = 44;
    const auto at = [&](int i) {
        const double t = static_cast<double>(i) / kSteps;
        return middle + turned(start + way * t * 3.6 * kPi, radius * std::pow(1 - t, 0.85));
    };
    stem.moveTo(at(0));
    for (int i = 1; i < kSteps; ++i) {
        stem.lineTo(at(i));
        if (i % 5 == 2 && i < kSteps * 3 / 4) {
            const double t = static_cast<double>(i) / kSteps;
            const double angle = start + way * t * 3.6 * kPi;
            leaves.addPath(leafAt(at(i), angle + way * 0.9, radius * 0.46 * (1 - t)));
            leaves.addPath(leafAt(at(i), angle + way * 2.3, radius * 0.30 * (1 - t)));
        }
    }
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen(p.pen().color(), weight, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.drawPath(stem);
    p.fillPath(leaves, p.pen().color());
    QPainterPath eye;
    eye.addEllipse(at(kSteps - 6), radius * 0.13, radius * 0.13);
    p.fillPath(eye, p.pen().color());
}

} // namespace

void drawArabesque(QPainter& painter, const QRectF& box, Seed seed) {
    Dice dice{seed};
    const double tall = box.height();
    const int scrolls = std::max(1, static_cast<int>(box.width() / 2 / tall + 0.35));
    const double pitch = box.width() / 2 / scrolls;
    const double radius = std::min(pitch, tall) * 0.47;
    for (const int side : {-1, 1}) {
        painter.save();
        painter.translate(box.center());
        painter.scale(side, 1);
        for (int i = 0; i < scrolls; ++i) {
            const QPointF middle{pitch * (i + 0.5), 0};
            const int way = i % 2 == 0 ? 1 : -1;
            drawScroll(painter, middle, radius, kPi, way, tall * 0.045);
            QPainterPath filling;
            for (int k = 0; k < 3; ++k) {
                const double a = way * (0.25 + 0.22 * k) * kPi;
                filling.addPath(
                    leafAt(middle + turned(a, radius * 1.02), a + way * 0.4, radius * 0.42));
                filling.addPath(
                    leafAt(middle + turned(-a, radius * 1.02), -a - way * 0.4, radius * 0.42));
            }
            painter.fillPath(filling, painter.pen().color());
        }
        painter.restore();
    }
    QPainterPath heart;
    for (int k = 0; k < 5; ++k) {
        heart.addPath(leafAt(box.center() + QPointF{0, tall * 0.28}, -kPi / 2 + (k - 2) * 0.42,
                             tall * (k == 2 ? 0.72 : 0.5)));
    }
    painter.fillPath(heart, painter.pen().color());
}

void drawFlowers(QPainter& painter, const QRectF& box) {
    const double tall = box.height();
    const int count = std::max(1, static_cast<int>(box.width() / tall));
    for (int i = 0; i < count; ++i) {
        const QPointF middle{box.center().x() + (i - (count - 1) / 2.0) * tall, box.center().y()};
        QPainterPath flower;
        for (int k = 0; k < 4; ++k) {
            const double a = kPi / 2 * k + kPi / 4;
            flower.addPath(leafAt(middle + turned(a, tall * 0.07), a, tall * 0.42));
            QPainterPath bud;
            bud.addEllipse(middle + turned(a + kPi / 4, tall * 0.30), tall * 0.065, tall * 0.065);
            flower.addPath(bud);
        }
        painter.fillPath(flower, painter.pen().color());
    }
}

void drawSwelledRule(QPainter& painter, const QRectF& box) {
    QPainterPath rule(QPointF{box.left(), box.center().y()});
    rule.quadTo(QPointF{box.center().x(), box.top()}, QPointF{box.right(), box.center().y()});
    rule.quadTo(QPointF{box.center().x(), box.bottom()}, QPointF{box.left(), box.center().y()});
    painter.fillPath(rule, painter.pen().color());
}

void drawCompassRose(QPainter& painter, const QPointF& middle, double radius) {
    const QColor ink = painter.pen().color();
    painter.save();
    painter.translate(middle);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink, radius * 0.018));
    for (const double share : {0.62, 0.66, 0.34}) {
        painter.drawEllipse(QPointF{}, radius * share, radius * share);
    }
    for (const int ring : {2, 1, 0}) {
        const int points = ring == 2 ? 16 : ring == 1 ? 8 : 4;
        const double length = radius * (ring == 2 ? 0.6 : ring == 1 ? 0.78 : 1.0);
        for (int i = 0; i < points; ++i) {
            const double a = 2 * kPi * i / points - kPi / 2;
            const double half = kPi / points;
            for (const int side : {-1, 1}) {
                QPainterPath ray(QPointF{});
                ray.lineTo(turned(a, length));
                ray.lineTo(turned(a + side * half, radius * 0.19));
                ray.closeSubpath();
                if (side > 0) {
                    painter.fillPath(ray, ink);
                } else {
                    painter.drawPath(ray);
                }
            }
        }
    }
    painter.restore();
}

void drawShip(QPainter& painter, const QRectF& box) {
    const QColor ink = painter.pen().color();
    const double w = box.width();
    const double h = box.height();
    const auto at = [&](double x, double y) {
        return QPointF{box.left() + x * w, box.top() + y * h};
    };
    QPainterPath hull(at(0.18, 0.66));
    hull.quadTo(at(0.24, 0.86), at(0.40, 0.87));
    hull.lineTo(at(0.68, 0.87));
    hull.quadTo(at(0.82, 0.84), at(0.87, 0.58));
    hull.lineTo(at(0.76, 0.66));
    hull.quadTo(at(0.48, 0.73), at(0.18, 0.66));
    painter.fillPath(hull, ink);
    const double line = h * 0.011;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink, line * 1.4));
    static constexpr std::array kMasts{0.33, 0.53, 0.72};
    static constexpr std::array kTops{0.20, 0.06, 0.24};
    for (std::size_t i = 0; i < kMasts.size(); ++i) {
        painter.setPen(QPen(ink, line * 1.6));
        painter.drawLine(at(kMasts[i], 0.7), at(kMasts[i], kTops[i]));
        for (int sail = 0; sail < 2; ++sail) {
            const double top = kTops[i] + 0.05 + sail * 0.22;
            const double half = 0.075 + sail * 0.025;
            QPainterPath cloth(at(kMasts[i] - half, top));
            cloth.lineTo(at(kMasts[i] + half, top));
            cloth.quadTo(at(kMasts[i] + half + 0.055, top + 0.1),
                         at(kMasts[i] + half + 0.01, top + 0.2));
            cloth.quadTo(at(kMasts[i], top + 0.16), at(kMasts[i] - half + 0.01, top + 0.2));
            cloth.quadTo(at(kMasts[i] - half + 0.05, top + 0.1), at(kMasts[i] - half, top));
            painter.setPen(QPen(ink, line));
            painter.drawPath(cloth);
            painter.save();
            painter.setClipPath(cloth);
            for (int k = 0; k < 16; ++k) {
                const double x = kMasts[i] + half * 0.25 + k * 0.009;
                painter.setPen(QPen(ink, line * 0.55));
                painter.drawLine(at(x, top), at(x + 0.02, top + 0.21));
            }
            painter.restore();
        }
    }
    painter.setPen(QPen(ink, line * 1.3));
    painter.drawLine(at(0.19, 0.67), at(0.05, 0.55));
    painter.setPen(QPen(ink, line * 0.7));
    for (int row = 0; row < 6; ++row) {
        QPainterPath wave;
        const double y = 0.84 + row * 0.03;
        wave.moveTo(at(0.02, y));
        for (int k = 0; k < 24; ++k) {
            const double x = 0.02 + k * 0.04;
            wave.quadTo(at(x + 0.02, y - 0.022 + 0.006 * ((k + row) % 3)), at(x + 0.04, y));
        }
        painter.drawPath(wave);
    }
}

void drawHive(QPainter& painter, const QRectF& box, Seed seed) {
    const QColor ink = painter.pen().color();
    const auto at = [&](double x, double y) {
        return QPointF{box.left() + x * box.width(), box.top() + y * box.height()};
    };
    const double line = box.height() * 0.012;
    painter.setBrush(Qt::NoBrush);
    constexpr int kCoils = 11;
    for (int i = 0; i < kCoils; ++i) {
        const double t = static_cast<double>(i) / (kCoils - 1);
        const double half = 0.30 * std::sqrt(1 - std::pow(1 - t, 2.4) * 0.96);
        const double y = 0.18 + t * 0.62;
        painter.setPen(QPen(ink, line));
        const QRectF coil(at(0.5 - half, y), at(0.5 + half, y + 0.075));
        painter.drawRoundedRect(coil, coil.height() / 2, coil.height() / 2);
        painter.setPen(QPen(ink, line * 0.6));
        for (int k = 0; k < 26; ++k) {
            const double x = 0.5 + half * (2.0 * (k + 0.5) / 26 - 1);
            const bool shaded = x > 0.5 + half * 0.1;
            painter.drawLine(at(x, y + 0.006), at(x + 0.012, y + (shaded ? 0.068 : 0.03)));
        }
    }
    QPainterPath door;
    door.addRoundedRect(QRectF(at(0.46, 0.73), at(0.54, 0.86)), 0.6, 0.6);
    painter.fillPath(door, ink);
    painter.setPen(QPen(ink, line * 1.6));
    painter.drawLine(at(0.12, 0.88), at(0.88, 0.88));
    painter.drawLine(at(0.16, 0.92), at(0.84, 0.92));
    Dice dice{seed};
    for (int bee = 0; bee < 9; ++bee) {
        const QPointF where = at(dice.between(0.05, 0.95), dice.between(0.02, 0.6));
        painter.save();
        painter.translate(where);
        painter.rotate(dice.between(0, 360));
        const double size = box.height() * 0.028;
        QPainterPath body;
        body.addEllipse(QPointF{}, size, size * 0.45);
        painter.fillPath(body, ink);
        painter.setPen(QPen(ink, line * 0.5));
        painter.drawEllipse(QPointF{-size * 0.2, -size * 0.7}, size * 0.6, size * 0.35);
        painter.drawEllipse(QPointF{-size * 0.2, size * 0.7}, size * 0.6, size * 0.35);
        painter.restore();
    }
}

} // namespace headcap::demo
