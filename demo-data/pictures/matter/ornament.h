// Printers' ornaments, cut in wood or cast: rules, rows of flowers, arabesques, a compass rose.
#pragma once

#include <QPainter>
#include <QPainterPath>
#include <QRectF>

#include "demo-data/pictures/base/noise.h"

namespace headcap::demo {

// Scrolls with leaves, the right half the mirror of the left.
void drawArabesque(QPainter& painter, const QRectF& box, Seed seed);
// A row of one small flower.
void drawFlowers(QPainter& painter, const QRectF& box);
void drawSwelledRule(QPainter& painter, const QRectF& box);
void drawCompassRose(QPainter& painter, const QPointF& middle, double radius);
// A ship under sail on a choppy sea.
void drawShip(QPainter& painter, const QRectF& box);
// A straw hive with bees about it.
void drawHive(QPainter& painter, const QRectF& box, Seed seed);

} // namespace headcap::demo
