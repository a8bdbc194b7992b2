// Paints a page that was laid out. One unit of the painter is one point, its origin the sheet's
// top left. Solid colours only. How a photograph gets onto the page is the caller's: a printer, a
// screen and a PDF each do it their own way.
#pragma once

#include <functional>

#include <QColor>
#include <QImage>
#include <QPainter>
#include <QString>

#include "app/print/layout/marks.h"

namespace headcap::app::print {

using PaintPicture = std::function<void(QPainter&, const Picture&)>;

void paintPage(QPainter& painter, const Page& page, const PaintPicture& paintPicture);

// Where a photograph of so many pixels stands: within the picture's area, in its own proportions.
[[nodiscard]] QRectF areaOf(const Picture& picture, QSize pixels);
// With a hair rule around it.
void paintPhoto(QPainter& painter, const QRectF& area, const QImage& image);
// A ruled, hatched box of the picture's size that says why it is not there.
void paintAbsence(QPainter& painter, const Picture& picture, const QString& reason);

// Pixels for a picture at its printed size.
[[nodiscard]] QSize pixelsOf(const Picture& picture, double dotsPerInch);

[[nodiscard]] QColor colourOf(Ink ink);
// The strokes of a hatch, cut at its sides; neighbouring areas go on with the same strokes.
[[nodiscard]] QList<QLineF> hatchStrokes(const Hatch& hatch);

} // namespace headcap::app::print
