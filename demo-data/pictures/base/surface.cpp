#include "demo-data/pictures/base/surface.h"

#include <algorithm>
#include <cmath>

namespace headcap::demo {

Tone toneOf(const QColor& colour) {
    return {static_cast<float>(colour.redF()), static_cast<float>(colour.greenF()),
            static_cast<float>(colour.blueF())};
}

Surface::Surface(const QRectF& window, double pixelsPerMm)
    : m_window(window), m_scale(pixelsPerMm),
      m_colour(std::max(1, static_cast<int>(std::lround(window.width() * pixelsPerMm))),
               std::max(1, static_cast<int>(std::lround(window.height() * pixelsPerMm))),
               QImage::Format_ARGB32_Premultiplied),
      m_relief(static_cast<std::size_t>(m_colour.width()) *
               static_cast<std::size_t>(m_colour.height())) {
    m_colour.fill(Qt::transparent);
}

RowPlace Surface::placeOf(int y) const {
    return {m_window.left() + 0.5 / m_scale, 1 / m_scale, m_window.top() + (y + 0.5) / m_scale};
}

std::span<QRgb> Surface::colours(int y) {
    return {reinterpret_cast<QRgb*>(m_colour.scanLine(y)), static_cast<std::size_t>(width())};
}

std::span<float> Surface::relief(int y) {
    return std::span{m_relief}.subspan(static_cast<std::size_t>(y) *
                                           static_cast<std::size_t>(width()),
                                       static_cast<std::size_t>(width()));
}

std::pair<int, int> Surface::rowsOf(double top, double bottom) const {
    const auto row = [&](double mm) {
        return std::clamp(static_cast<int>((mm - m_window.top()) * m_scale), 0, height());
    };
    return {row(top), std::min(height(), row(bottom) + 1)};
}

void Surface::paint(const std::function<void(QPainter&)>& draw) {
    paintOn(m_colour, draw);
}

void Surface::paintOn(QImage& other, const std::function<void(QPainter&)>& draw) const {
    QPainter painter(&other);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(m_scale, m_scale);
    painter.translate(-m_window.topLeft());
    draw(painter);
}

QImage Surface::mask() const {
    QImage image(m_colour.size(), QImage::Format_Grayscale8);
    image.fill(0);
    return image;
}

void Surface::light(float strength) {
    const auto columns = static_cast<std::size_t>(width());
    const float steepness = static_cast<float>(m_scale) * 0.7F * strength;
    for (int y = 0; y < height(); ++y) {
        const auto here = relief(y);
        const auto above = relief(y == 0 ? 0 : y - 1);
        const auto row = colours(y);
        for (std::size_t x = 1; x < columns; ++x) {
            const float slope = (2 * here[x] - here[x - 1] - above[x]) * steepness;
            const float shade = 256.0F * (1 + (slope > 0.5F     ? 0.5F
                                               : slope < -0.75F ? -0.75F
                                                                : slope));
            const int factor = static_cast<int>(shade);
            const QRgb p = row[x];
            const int alpha = qAlpha(p);
            row[x] = qRgba(std::min(alpha, qRed(p) * factor >> 8),
                           std::min(alpha, qGreen(p) * factor >> 8),
                           std::min(alpha, qBlue(p) * factor >> 8), alpha);
        }
    }
}

} // namespace headcap::demo
