// Type as it was set by hand: lines of letters as outlines in millimetres, the same at every
// resolution, a little uneven as worn sorts stand.
#pragma once

#include <QPainterPath>
#include <QString>

#include "demo-data/pictures/base/noise.h"

namespace headcap::demo {

struct Face {
    double size = 4; // of the body, in millimetres
    bool italic = false;
    bool bold = false;
    double track = 0; // between letters, in millimetres
};

[[nodiscard]] double widthOf(const QString& text, const Face& face);

// Its left end stands at `x` on the baseline `y`.
[[nodiscard]] QPainterPath setLine(const QString& text, const Face& face, double x, double y,
                                   Seed unevenness);

// As compositors did until about 1800: ſ but at a word's end and before f.
[[nodiscard]] QString withLongS(const QString& text);

} // namespace headcap::demo
