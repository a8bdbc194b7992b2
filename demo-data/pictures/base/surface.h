// What lies before the camera: a flat thing drawn in millimetres, with a colour, a cut-out and a
// relief at each pixel. Its own light falls from the upper left.
#pragma once

#include <functional>
#include <span>
#include <vector>

#include <QImage>
#include <QPainter>
#include <QRectF>

#include "demo-data/pictures/base/noise.h"

namespace headcap::demo {

struct Tone { // linear factors of red, green and blue, 1 is white
    float red = 1;
    float green = 1;
    float blue = 1;
};

[[nodiscard]] Tone toneOf(const QColor& colour);

class Surface {
public:
    // What part of the thing it shows, in the thing's own millimetres.
    Surface(const QRectF& window, double pixelsPerMm);

    [[nodiscard]] int width() const { return m_colour.width(); }
    [[nodiscard]] int height() const { return m_colour.height(); }
    [[nodiscard]] double scale() const { return m_scale; }
    [[nodiscard]] const QRectF& window() const { return m_window; }
    [[nodiscard]] const QImage& image() const { return m_colour; }
    [[nodiscard]] QImage& image() { return m_colour; }

    [[nodiscard]] RowPlace placeOf(int y) const;
    [[nodiscard]] std::span<QRgb> colours(int y);
    [[nodiscard]] std::span<float> relief(int y); // millimetres above the sheet
    // The rows that a part of the thing touches.
    [[nodiscard]] std::pair<int, int> rowsOf(double top, double bottom) const;

    // A painter whose unit is the thing's millimetre.
    void paint(const std::function<void(QPainter&)>& draw);
    void paintOn(QImage& other, const std::function<void(QPainter&)>& draw) const;
    // Black all over, of the surface's size: for masks of one byte.
    [[nodiscard]] QImage mask() const;

    // Slopes towards the light are lightened, those away from it darkened.
    void light(float strength = 1.0F);

private:
    QRectF m_window;
    double m_scale;
    QImage m_colour;
    std::vector<float> m_relief;
};

// Multiplies a pixel's colour by a tone, as far as `share` says; its cut-out stays.
[[nodiscard]] inline QRgb toned(QRgb pixel, const Tone& tone, float share) {
    const auto part = [&](int value, float factor) {
        const float v = static_cast<float>(value) * (1.0F + share * (factor - 1.0F));
        return static_cast<int>(v < 0 ? 0 : v > 255 ? 255 : v + 0.5F);
    };
    return qRgba(part(qRed(pixel), tone.red), part(qGreen(pixel), tone.green),
                 part(qBlue(pixel), tone.blue), qAlpha(pixel));
}

// Goes from a pixel's colour to another, as far as `share` says.
[[nodiscard]] inline QRgb blended(QRgb pixel, const Tone& to, float share) {
    const float cover = static_cast<float>(qAlpha(pixel));
    const auto part = [&](int value, float target) {
        const float v =
            static_cast<float>(value) + share * (target * cover - static_cast<float>(value));
        return static_cast<int>(v < 0 ? 0 : v > cover ? cover : v + 0.5F);
    };
    return qRgba(part(qRed(pixel), to.red), part(qGreen(pixel), to.green),
                 part(qBlue(pixel), to.blue), qAlpha(pixel));
}

// Takes a pixel away, as far as `share` says.
[[nodiscard]] inline QRgb cutOut(QRgb pixel, float share) {
    const float keep = share >= 1 ? 0 : share <= 0 ? 1 : 1 - share;
    const auto part = [&](int value) { return qRound(static_cast<float>(value) * keep); };
    return qRgba(part(qRed(pixel)), part(qGreen(pixel)), part(qBlue(pixel)), part(qAlpha(pixel)));
}

} // namespace headcap::demo
