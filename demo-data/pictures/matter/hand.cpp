#include "demo-data/pictures/matter/hand.h"

#include <array>
#include <cmath>
#include <vector>

namespace headcap::demo {
namespace {

// Strokes by the points a pen goes through, x then y in hundredths of a small letter's height, the
// baseline at 0; 999 lifts the pen. The last point is where the next letter begins.
struct Letter {
    char16_t sign;
    std::array<std::int16_t, 40> points;
};
constexpr std::int16_t kLift = 999;
constexpr std::int16_t kEnd = 998;

constexpr std::array kLetters{
    Letter{u'a',
           {0, 10, 50, 92, 26, 96, 6, 50, 20, 4, 46, 40, 60, 95, 56, 20, 68, 2, 88, 20, kEnd}},
    Letter{u'b', {0,  10, 30, 120, 40, 200, 26, 198, 20, 100, 20,
                  10, 40, 0,  60,  34, 54,  84, 78,  74, kEnd}},
    Letter{u'c', {0, 10, 44, 84, 30, 99, 8, 56, 16, 10, 38, 0, 64, 24, kEnd}},
    Letter{u'd',
           {0, 10, 50, 92, 22, 96, 5, 46, 20, 3, 46, 34, 66, 200, 58, 30, 68, 2, 90, 20, kEnd}},
    Letter{u'e', {0, 10, 40, 52, 42, 94, 22, 98, 9, 50, 20, 5, 38, 2, 62, 24, kEnd}},
    Letter{u'f', {0,   10, 36,  100, 56,  190, 40, 205, 30, 120, 18,
                  -80, 4,  -96, 12,  -40, 46,  14, 66,  20, kEnd}},
    Letter{u'g', {0,  10, 50,  92, 22,   96, 5,   50, 20, 8,  46, 36,  60,
                  95, 48, -60, 28, -104, 8,  -80, 42, -8, 86, 24, kEnd}},
    Letter{u'h', {0,  10, 36, 130, 42, 200, 28, 200, 20, 100, 14, 0,   26,
                  60, 50, 99, 60,  78, 57,  14, 70,  2,  90,  20, kEnd}},
    Letter{u'i', {0, 10, 26, 95, 26, 20, 38, 2, 58, 20, kLift, 34, 140, 36, 146, kEnd}},
    Letter{u'j', {0, 10, 28, 95, 18, -60, 0, -100, -14, -74, 20, -6, 56, 24, kEnd}},
    Letter{u'k', {0,  10, 36, 130, 42, 200, 28, 200, 20, 100, 16,  0,
                  30, 46, 56, 92,  30, 52,  52, 6,   78, 20,  kEnd}},
    Letter{u'l', {0, 10, 36, 130, 40, 200, 26, 200, 20, 80, 20, 10, 34, 0, 56, 20, kEnd}},
    Letter{u'm', {0,  10, 18, 90, 20, 0,  26, 60, 44, 98, 52,  70, 50,  0,
                  57, 60, 76, 98, 86, 70, 84, 14, 94, 2,  114, 20, kEnd}},
    Letter{u'n', {0, 10, 18, 90, 20, 0, 27, 60, 48, 98, 57, 70, 54, 14, 65, 2, 86, 20, kEnd}},
    Letter{u'o', {0, 10, 40, 94, 16, 86, 5, 40, 20, 2, 42, 20, 48, 70, 34, 95, 72, 80, kEnd}},
    Letter{u'p', {0, 10, 26, 92, 18, -90, 22, 30, 46, 95, 60, 60, 46, 5, 28, 10, 76, 14, kEnd}},
    Letter{u'q',
           {0, 10, 50, 92, 22, 96, 5, 50, 20, 8, 46, 36, 60, 95, 50, -90, 60, -40, 86, 20, kEnd}},
    Letter{u'r', {0, 10, 20, 102, 28, 86, 50, 84, 45, 20, 54, 2, 72, 20, kEnd}},
    Letter{u's', {0, 10, 30, 102, 42, 50, 34, 10, 14, 4, 34, 4, 62, 20, kEnd}},
    Letter{0x017F,
           {0, 10, 36, 100, 58, 190, 44, 204, 32, 120, 16, -84, 2, -98, 10, -40, 60, 20, kEnd}},
    Letter{u't', {0, 10, 36, 160, 28, 30, 38, 2, 58, 20, kLift, 12, 112, 56, 116, kEnd}},
    Letter{u'u', {0, 10, 20, 95, 18, 20, 30, 2, 50, 40, 58, 95, 56, 20, 66, 2, 86, 20, kEnd}},
    Letter{u'v', {0, 10, 16, 95, 24, 20, 34, 2, 54, 60, 50, 95, 76, 82, kEnd}},
    Letter{u'w',
           {0, 10, 16, 95, 22, 20, 32, 2, 50, 70, 52, 20, 62, 2, 82, 60, 78, 95, 104, 82, kEnd}},
    Letter{u'x', {0, 10, 24, 95, 40, 40, 56, 2, 74, 20, kLift, 58, 92, 14, 4, kEnd}},
    Letter{u'y', {0,  10,  20, 95,   20, 20,  32, 4,  52, 50, 58,  95,
                  46, -60, 26, -100, 8,  -76, 42, -6, 84, 22, kEnd}},
    Letter{u'z', {0, 10, 20, 92, 46, 92, 12, 8, 36, 0, 26, -70, 8, -84, 30, -20, 66, 20, kEnd}},
    Letter{u'0', {40, 150, 14, 130, 6, 60, 24, 2, 50, 30, 54, 110, 38, 150, 74, 146, kEnd}},
    Letter{u'1', {14, 120, 38, 152, 34, 80, 32, 0, kLift, 60, 2, kEnd}},
    Letter{u'2', {8, 120, 30, 152, 52, 120, 34, 60, 6, 2, 30, 8, 66, 2, kEnd}},
    Letter{u'3', {10, 140, 36, 152, 48, 116, 26, 84, 52, 50, 36, 0, 6, 12, kLift, 70, 2, kEnd}},
    Letter{u'4', {40, 152, 8, 44, 62, 48, kLift, 46, 84, 40, -20, kLift, 74, 2, kEnd}},
    Letter{u'5', {22, 150,   16, 90,  46, 84,  54,    40, 32, 0,   6,
                  10, kLift, 22, 150, 58, 156, kLift, 72, 2,  kEnd}},
    Letter{u'6', {52, 150, 18, 96, 8, 36, 26, 0, 52, 24, 44, 66, 14, 50, kLift, 74, 2, kEnd}},
    Letter{u'7', {8, 144, 58, 148, 34, 60, 22, -24, kLift, 72, 2, kEnd}},
    Letter{u'8',
           {50, 140, 26, 152, 16, 116, 52, 50, 32, 0, 8, 30, 40, 90, 52, 136, kLift, 76, 2, kEnd}},
    Letter{u'9', {50, 130, 24, 150, 10, 108, 30, 80, 52, 116, 48, 40, 24, -20, kLift, 74, 2, kEnd}},
    Letter{u'.', {14, 2, 18, 8, kLift, 40, 2, kEnd}},
    Letter{u',', {16, 8, 8, -24, kLift, 40, 2, kEnd}},
    Letter{u'-', {8, 56, 46, 60, kLift, 60, 20, kEnd}},
    Letter{u'£', {56, 150, 34,    156, 28, 90, 22, 20,    4,  6, 30,  6,
                  66, 10,  kLift, 10,  80, 54, 84, kLift, 84, 2, kEnd}},
};

const Letter* letterOf(QChar sign) {
    for (const Letter& letter : kLetters) {
        if (letter.sign == sign.unicode()) {
            return &letter;
        }
    }
    return nullptr;
}

using Stroke = std::vector<QPointF>;

// The strokes of a letter, and how far it takes the pen.
double strokesOf(QChar sign, std::vector<Stroke>& strokes) {
    const Letter* letter = letterOf(sign);
    if (letter == nullptr) {
        return 0.5;
    }
    strokes.emplace_back();
    QPointF last;
    for (std::size_t i = 0; i < letter->points.size() && letter->points[i] != kEnd;) {
        if (letter->points[i] == kLift) {
            strokes.emplace_back();
            ++i;
            continue;
        }
        last = {letter->points[i] / 100.0, letter->points[i + 1] / 100.0};
        strokes.back().push_back(last);
        i += 2;
    }
    double reach = 0;
    for (const QPointF& point : strokes.front()) {
        reach = std::max(reach, point.x());
    }
    return std::max(reach, last.x());
}

QPointF through(const Stroke& s, std::size_t i, double t) {
    const auto at = [&](std::ptrdiff_t k) {
        const auto n = static_cast<std::ptrdiff_t>(s.size());
        return s[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(k, 0, n - 1))];
    };
    const auto k = static_cast<std::ptrdiff_t>(i);
    const QPointF a = at(k - 1), b = at(k), c = at(k + 1), d = at(k + 2);
    return 0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t * t +
                  (3 * b - a - 3 * c + d) * t * t * t);
}

struct Nib {
    QPainter& painter;
    const Pen& pen;
    QPointF foot; // where the letter begins
    double size;

    [[nodiscard]] QPointF placed(const QPointF& p) const {
        return foot + QPointF{(p.x() + pen.slant * p.y()) * size, -p.y() * size};
    }

    void draw(const Stroke& stroke) const {
        QPen line(painter.pen().color());
        line.setCapStyle(Qt::RoundCap);
        for (std::size_t i = 0; i + 1 < stroke.size(); ++i) {
            constexpr int kSteps = 6;
            QPointF from = placed(through(stroke, i, 0));
            for (int k = 1; k <= kSteps; ++k) {
                const QPointF to = placed(through(stroke, i, static_cast<double>(k) / kSteps));
                const QPointF way = to - from;
                const double down = way.y() / std::max(1e-6, std::hypot(way.x(), way.y()));
                line.setWidthF(pen.broad * (0.30 + 0.70 * std::max(0.0, down)));
                painter.setPen(line);
                painter.drawLine(from, to);
                from = to;
            }
        }
    }
};

} // namespace

double writeLine(QPainter& painter, const QString& text, const Pen& pen, double x, double y,
                 Seed seed) {
    const QColor ink = painter.pen().color();
    double at = x;
    int count = 0;
    for (const QChar sign : text) {
        ++count;
        if (sign == QLatin1Char(' ')) {
            at += pen.tall * 0.62;
            continue;
        }
        const bool capital = sign.isUpper();
        const double size = pen.tall * (capital ? 1.62 : 1) *
                            (0.94 + 0.12 * static_cast<double>(chanceAt(seed, count, 0)));
        const double lift = (static_cast<double>(chanceAt(seed, count, 1)) - 0.5) * pen.tall * 0.10;
        std::vector<Stroke> strokes;
        const double reach = strokesOf(sign.toLower(), strokes);
        painter.setPen(ink);
        const Nib nib{painter, pen, {at, y + lift}, size};
        for (const Stroke& stroke : strokes) {
            nib.draw(stroke);
        }
        if (capital) {
            nib.draw({{-0.35, 0.62}, {-0.2, 1.02}, {0.2, 1.02}, {0.5, 0.9}});
        }
        at += reach * size;
    }
    painter.setPen(ink);
    return at;
}

double writtenWidth(const QString& text, const Pen& pen) {
    double width = 0;
    for (const QChar sign : text) {
        std::vector<Stroke> strokes;
        width += sign == QLatin1Char(' ')
                     ? pen.tall * 0.62
                     : strokesOf(sign.toLower(), strokes) * pen.tall * (sign.isUpper() ? 1.62 : 1);
    }
    return width;
}

} // namespace headcap::demo
