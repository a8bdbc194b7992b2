// The grey table under the camera: surfaces are laid on it with their shadows, a scale bar and a
// grey card beside them. Unit: the table's millimetre.
#pragma once

#include <QImage>
#include <QPointF>
#include <QRectF>

#include "demo-data/pictures/base/surface.h"

namespace headcap::demo {

struct Lying {
    QPointF at;               // its window's upper left, before turning
    double turn = 0;          // degrees, about its middle
    double rise = 0.3;        // millimetres above the table: how far its shadow falls
    double bow = 0;           // how far its lines dip towards the fold, in millimetres
    bool foldAtRight = false; // the fold is at its right edge, else its left
};

class Table {
public:
    // The ground in a tone of grey, 0 to 1.
    Table(const QSize& pixels, double pixelsPerMm, Seed seed, float grey = 0.5F);

    [[nodiscard]] double scale() const { return m_scale; }
    [[nodiscard]] QSizeF size() const {
        return {m_image.width() / m_scale, m_image.height() / m_scale};
    }

    void lay(const Surface& thing, const Lying& lying);
    // `length` in mm, from 20 to 200: as long a bar as the table has room for.
    void layScaleBar(const QPointF& at, int length);
    void layGreyCard(const QPointF& at, double side);

    [[nodiscard]] QImage& image() { return m_image; }

private:
    void castShadow(const Surface& thing, const Lying& lying);

    double m_scale;
    Seed m_seed;
    QImage m_image;
};

} // namespace headcap::demo
