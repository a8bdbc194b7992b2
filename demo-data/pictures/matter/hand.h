// A clerk's hand of the eighteenth century: letters as strokes of a pen that is thick going down
// and thin going up, joined within a word, none quite like the last.
#pragma once

#include <QPainter>
#include <QString>

#include "demo-data/pictures/base/noise.h"

namespace headcap::demo {

struct Pen {
    double tall = 2.0;   // of a small letter, in millimetres
    double broad = 0.42; // of a stroke going down
    double slant = 0.42;
};

// Written from `x` on the baseline `y`; where the line ends.
double writeLine(QPainter& painter, const QString& text, const Pen& pen, double x, double y,
                 Seed seed);
[[nodiscard]] double writtenWidth(const QString& text, const Pen& pen);

} // namespace headcap::demo
