#include "demo-data/pictures/scene/table.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <QPainter>

namespace headcap::demo {
namespace {

// From the table's pixels back to the thing's.
class WayBack {
public:
    WayBack(const Surface& thing, const Lying& lying, double tableScale)
        : m_bow(lying.bow * thing.scale()), m_foldAtRight(lying.foldAtRight),
          m_width(thing.width()), m_reach(22 * thing.scale()) {
        const double angle = lying.turn * 3.14159265358979 / 180;
        const double ratio = thing.scale() / tableScale;
        m_cos = std::cos(angle) * ratio;
        m_sin = std::sin(angle) * ratio;
        m_middle = {thing.width() / 2.0, thing.height() / 2.0};
        const QSizeF mm = thing.window().size();
        m_at = (lying.at + QPointF{mm.width() / 2, mm.height() / 2}) * tableScale;
    }

    [[nodiscard]] QPointF operator()(double x, double y) const {
        const double dx = x - m_at.x();
        const double dy = y - m_at.y();
        QPointF from{m_middle.x() + m_cos * dx + m_sin * dy,
                     m_middle.y() - m_sin * dx + m_cos * dy};
        if (m_bow > 0) {
            const double off = m_foldAtRight ? m_width - from.x() : from.x();
            // Beyond ten times its reach not a hundredth of a pixel is left of it.
            if (off < 10 * m_reach) {
                from.ry() -= m_bow * std::exp(-std::max(0.0, off) / m_reach);
            }
        }
        return from;
    }

    // The table's pixels that it may touch.
    [[nodiscard]] QRect reach(const QSize& thing, const QSize& table) const {
        const double ratio = std::hypot(m_cos, m_sin);
        const double half = 0.5 *
                            (std::abs(m_cos) * thing.width() + std::abs(m_sin) * thing.height()) /
                            (ratio * ratio);
        const double tall =
            0.5 * (std::abs(m_sin) * thing.width() + std::abs(m_cos) * thing.height()) /
                (ratio * ratio) +
            m_bow / ratio;
        return QRectF(m_at.x() - half, m_at.y() - tall, 2 * half, 2 * tall)
            .toAlignedRect()
            .adjusted(-1, -1, 1, 1)
            .intersected(QRect(QPoint{}, table));
    }

private:
    QPointF m_at;
    QPointF m_middle;
    double m_cos = 1;
    double m_sin = 0;
    double m_bow;
    bool m_foldAtRight;
    double m_width;
    double m_reach;
};

// Two shades of a shadow, small: it is soft, and so needs few pixels.
constexpr int kShadowShare = 8;

void blurRows(std::vector<float>& map, int width, int height, int radius, int stepX, int stepY) {
    std::vector<float> line;
    for (int outer = 0; outer < height; ++outer) {
        line.assign(static_cast<std::size_t>(width), 0);
        const auto cell = [&](int i) -> float& {
            return map[static_cast<std::size_t>(outer * stepY + i * stepX)];
        };
        float sum = 0;
        for (int i = -radius; i <= radius; ++i) {
            sum += cell(std::clamp(i, 0, width - 1));
        }
        for (int i = 0; i < width; ++i) {
            line[static_cast<std::size_t>(i)] = sum / static_cast<float>(2 * radius + 1);
            sum += cell(std::min(i + radius + 1, width - 1)) - cell(std::max(i - radius, 0));
        }
        for (int i = 0; i < width; ++i) {
            cell(i) = line[static_cast<std::size_t>(i)];
        }
    }
}

void blur(std::vector<float>& map, int width, int height, double radius) {
    const int whole = std::max(1, static_cast<int>(std::lround(radius)));
    for (int pass = 0; pass < 2; ++pass) {
        blurRows(map, width, height, whole, 1, width);
        blurRows(map, height, width, whole, width, 1);
    }
}

QRgb sampled(const QImage& from, double x, double y) {
    const int left = static_cast<int>(std::floor(x));
    const int top = static_cast<int>(std::floor(y));
    const auto fx = static_cast<unsigned>((x - left) * 256);
    const auto fy = static_cast<unsigned>((y - top) * 256);
    const auto pixel = [&](int px, int py) -> QRgb {
        return px < 0 || py < 0 || px >= from.width() || py >= from.height()
                   ? 0
                   : reinterpret_cast<const QRgb*>(from.constScanLine(py))[px];
    };
    const QRgb a = pixel(left, top);
    const QRgb b = pixel(left + 1, top);
    const QRgb c = pixel(left, top + 1);
    const QRgb d = pixel(left + 1, top + 1);
    // Two channels at a time, in the halves of a word.
    const auto mix = [](QRgb p, QRgb q, unsigned f) {
        const QRgb odd =
            (((p >> 8) & 0xff00ffU) * (256 - f) + ((q >> 8) & 0xff00ffU) * f) & 0xff00ff00U;
        const QRgb even = ((((p & 0xff00ffU) * (256 - f) + (q & 0xff00ffU) * f)) >> 8) & 0xff00ffU;
        return odd | even;
    };
    return mix(mix(a, b, fx), mix(c, d, fx), fy);
}

} // namespace

Table::Table(const QSize& pixels, double pixelsPerMm, Seed seed, float grey)
    : m_scale(pixelsPerMm), m_seed(seed), m_image(pixels, QImage::Format_RGB32) {
    const Noise cloud{mixed(seed, 1), 70};
    const Noise felt{mixed(seed, 2), 0.5, 0.5};
    const Noise nap{mixed(seed, 3), 2.4, 0.35};
    std::vector<float> row(static_cast<std::size_t>(pixels.width()));
    for (int y = 0; y < pixels.height(); ++y) {
        std::ranges::fill(row, grey);
        const RowPlace place{0, 1 / m_scale, y / m_scale};
        cloud.addTo(row, place, 0.012F);
        felt.addTo(row, place, 0.013F);
        nap.addTo(row, place, 0.010F);
        auto* line = reinterpret_cast<QRgb*>(m_image.scanLine(y));
        for (std::size_t x = 0; x < row.size(); ++x) {
            const int value = static_cast<int>(std::clamp(row[x], 0.0F, 1.0F) * 255);
            line[x] = qRgb(value, value, std::min(255, value + 1));
        }
    }
}

void Table::castShadow(const Surface& thing, const Lying& lying) {
    const int width = m_image.width() / kShadowShare + 1;
    const int height = m_image.height() / kShadowShare + 1;
    const auto cells = static_cast<std::size_t>(width) * static_cast<std::size_t>(height);
    std::vector<float> cover(cells, 0);
    const WayBack back{thing, lying, m_scale};
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            const QPointF from = back((x + 0.5) * kShadowShare, (y + 0.5) * kShadowShare);
            const QPoint at = from.toPoint();
            if (thing.image().rect().contains(at)) {
                cover[static_cast<std::size_t>(y * width + x)] =
                    static_cast<float>(qAlpha(thing.image().pixel(at))) / 255.0F;
            }
        }
    }
    auto wide = cover;
    const double mm = m_scale / kShadowShare;
    blur(cover, width, height, std::max(0.5, 0.8 * lying.rise + 0.7) * mm);
    blur(wide, width, height, (2.2 * lying.rise + 4) * mm);
    const double tightBy = (0.5 * lying.rise + 0.3) * mm;
    const double wideBy = (1.3 * lying.rise + 1.0) * mm;
    const auto at = [&](const std::vector<float>& map, double x, double y) {
        const double cx = std::clamp(x, 0.0, width - 1.001);
        const double cy = std::clamp(y, 0.0, height - 1.001);
        const auto ix = static_cast<int>(cx);
        const auto iy = static_cast<int>(cy);
        const auto fx = static_cast<float>(cx - ix);
        const auto fy = static_cast<float>(cy - iy);
        const auto cell = [&](int px, int py) {
            return map[static_cast<std::size_t>(std::min(py, height - 1) * width +
                                                std::min(px, width - 1))];
        };
        return (cell(ix, iy) * (1 - fx) + cell(ix + 1, iy) * fx) * (1 - fy) +
               (cell(ix, iy + 1) * (1 - fx) + cell(ix + 1, iy + 1) * fx) * fy;
    };
    QRect fallen;
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            if (wide[static_cast<std::size_t>(y * width + x)] > 0.004F) {
                fallen |= QRect(x, y, 1, 1);
            }
        }
    }
    const int reach = static_cast<int>(wideBy) + 2;
    const QRect seen = QRect(fallen.topLeft() * kShadowShare, fallen.size() * kShadowShare)
                           .adjusted(0, 0, reach * kShadowShare, reach * kShadowShare)
                           .intersected(m_image.rect());
    for (int y = seen.top(); y <= seen.bottom(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(m_image.scanLine(y));
        const double sy = y / static_cast<double>(kShadowShare) - 0.5;
        for (int x = seen.left(); x <= seen.right(); ++x) {
            const double sx = x / static_cast<double>(kShadowShare) - 0.5;
            const float dark = 0.42F * at(cover, sx - tightBy, sy - tightBy) +
                               0.30F * at(wide, sx - wideBy, sy - wideBy);
            if (dark > 0.004F) {
                line[x] = toned(line[x] | 0xff000000U, {0, 0, 0.02F}, dark);
            }
        }
    }
}

void Table::lay(const Surface& thing, const Lying& lying) {
    castShadow(thing, lying);
    const WayBack back{thing, lying, m_scale};
    const QRect reach = back.reach(thing.image().size(), m_image.size());
    for (int y = reach.top(); y <= reach.bottom(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(m_image.scanLine(y));
        for (int x = reach.left(); x <= reach.right(); ++x) {
            const QPointF from = back(x + 0.5, y + 0.5) - QPointF{0.5, 0.5};
            const QRgb over = sampled(thing.image(), from.x(), from.y());
            const int alpha = qAlpha(over);
            if (alpha == 255) {
                line[x] = over;
            } else if (alpha > 0) {
                const QRgb under = line[x];
                const int keep = 255 - alpha;
                line[x] = qRgb(qRed(over) + qRed(under) * keep / 255,
                               qGreen(over) + qGreen(under) * keep / 255,
                               qBlue(over) + qBlue(under) * keep / 255);
            }
        }
    }
}

void Table::layScaleBar(const QPointF& at, int length) {
    Surface bar{QRectF{0, 0, length + 8.0, 13}, m_scale};
    bar.paint([&](QPainter& p) {
        p.setPen(Qt::NoPen);
        p.setBrush(QColor(236, 235, 230));
        p.drawRect(bar.window());
        p.setBrush(QColor(24, 24, 24));
        for (int cm = 0; cm < length / 10; ++cm) {
            p.drawRect(QRectF(4 + cm * 10, cm % 2 == 0 ? 1.4 : 3.9, 10, 2.5));
        }
        p.drawRect(QRectF(4, 1.4, length, 0.15));
        p.drawRect(QRectF(4, 6.3, length, 0.15));
        for (int mm = 0; mm <= length; ++mm) {
            const double tall = mm % 10 == 0 ? 1.8 : mm % 5 == 0 ? 1.3 : 0.8;
            p.drawRect(QRectF(4 + mm - 0.07, 6.4, 0.14, tall));
        }
        QFont font(QStringLiteral("Noto Sans"));
        font.setPixelSize(100);
        p.setFont(font);
        const auto word = [&](double x, const QString& text) {
            p.save();
            p.translate(x, 11.4);
            p.scale(0.026, 0.026);
            p.drawText(QRectF(-400, -120, 800, 150), Qt::AlignHCenter | Qt::AlignBottom, text);
            p.restore();
        };
        p.setPen(QColor(24, 24, 24));
        for (int cm = 0; cm < length / 10; ++cm) {
            word(4 + cm * 10, QString::number(cm));
        }
        word(4 + length - 1.5, QString::number(length / 10) + QStringLiteral(" cm"));
    });
    lay(bar, {.at = at, .turn = chanceAt(m_seed, 3, 4) * 0.8 - 0.4, .rise = 0.4});
}

void Table::layGreyCard(const QPointF& at, double side) {
    Surface card{QRectF{0, 0, side, side * 0.62}, m_scale};
    card.paint([&](QPainter& p) {
        p.setPen(Qt::NoPen);
        p.setBrush(QColor(240, 239, 234));
        p.drawRect(card.window());
        static constexpr std::array kSteps{243, 200, 160, 122, 85, 52};
        const double width = (side - 3) / static_cast<double>(kSteps.size());
        for (std::size_t i = 0; i < kSteps.size(); ++i) {
            p.setBrush(QColor(kSteps[i], kSteps[i], kSteps[i]));
            p.drawRect(QRectF(1.5 + static_cast<double>(i) * width, 1.5, width, side * 0.62 - 3));
        }
    });
    lay(card, {.at = at, .turn = chanceAt(m_seed, 5, 6) * 2.0 - 1.0, .rise = 0.4});
}

} // namespace headcap::demo
