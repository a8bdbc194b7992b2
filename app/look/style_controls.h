// How single controls are drawn. Internal to app/look.
#pragma once

#include <QPainter>
#include <QStyleOption>
#include <QWidget>

#include "app/look/grid.h"
#include "app/look/palette.h"

namespace headcap::app::controls {

inline constexpr int kFieldPad = 2 * kGrid;

// The line of an editable choice is drawn by its box.
[[nodiscard]] bool isInsideCombo(const QWidget* widget);
// The body of a field and the line it stands on; wherever it has one, a line all round.
void field(QPainter& painter, const QRect& rect, const Colours& colours, bool hasFocus,
           const QWidget* widget);
// Of what lies over the page.
void edge(QPainter& painter, const QRect& rect, const Colours& colours);
void button(QPainter& painter, const QStyleOptionButton& option, const QWidget* widget);
void checkMark(QPainter& painter, const QStyleOption& option);
void radioMark(QPainter& painter, const QStyleOption& option);
void chevron(QPainter& painter, const QRect& rect, const QColor& colour, Qt::ArrowType way);
void scrollBar(QPainter& painter, const QStyleOptionSlider& option, const QRect& handle);
// On the fill of a main button it lies within, in the colour of paper.
void focusRing(QPainter& painter, const QRect& rect, const Colours& colours, const QWidget* widget);
void rowGround(QPainter& painter, const QStyleOption& option);
void header(QPainter& painter, const QStyleOptionHeader& option);
void tab(QPainter& painter, const QStyleOptionTab& option);
void progress(QPainter& painter, const QStyleOptionProgressBar& option);

} // namespace headcap::app::controls
