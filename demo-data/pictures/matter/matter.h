// What stands on a leaf: a title, prose, a map, music, accounts in a hand. Drawn in the leaf's
// millimetres, one ink at a time.
#pragma once

#include <QPainter>
#include <QSizeF>

#include "demo-data/loader/moment.h"
#include "demo-data/pictures/base/noise.h"

namespace headcap::demo {

enum class Ink { black, red, ironGall, wash };

// The painter's pen colour is the ink; washes bring their own. What the matter has in another ink
// is not drawn.
void drawMatter(QPainter& painter, const Json& matter, const QSizeF& leaf, Ink ink, Seed seed);

[[nodiscard]] QString textOf(const Json& object, const char* member);

void drawTitle(QPainter& painter, const Json& title, const QSizeF& leaf, Ink ink, Seed seed);
void drawProse(QPainter& painter, const Json& prose, const QSizeF& leaf, Ink ink, Seed seed);
void drawMusic(QPainter& painter, const Json& music, const QSizeF& leaf, Ink ink, Seed seed);
void drawMap(QPainter& painter, const Json& map, const QSizeF& leaf, Ink ink, Seed seed);
void drawAccounts(QPainter& painter, const Json& accounts, const QSizeF& leaf, Ink ink, Seed seed);

} // namespace headcap::demo
