#include "app/look/style_controls.h"

#include <QComboBox>

#include "app/look/grid.h"
#include "app/look/style.h"

namespace headcap::app::controls {
namespace {

constexpr qreal kRound = 3;

QRectF crisp(const QRect& rect) {
    return QRectF(rect).adjusted(0.5, 0.5, -0.5, -0.5);
}

bool says(const QWidget* widget, const char* property) {
    return widget != nullptr && widget->property(property).toBool();
}

} // namespace

bool isInsideCombo(const QWidget* widget) {
    return widget != nullptr && qobject_cast<const QComboBox*>(widget->parentWidget()) != nullptr;
}

void focusRing(QPainter& painter, const QRect& rect, const Colours& colours,
               const QWidget* widget) {
    const bool isFilled = says(widget, kMainButton) && widget->isEnabled();
    const qreal in = isFilled ? 3 : 1;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(isFilled ? colours.paper : colours.accent, isFilled ? 1.5 : 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect).adjusted(in, in, -in, -in), kRound, kRound);
    painter.restore();
}

void field(QPainter& painter, const QRect& rect, const Colours& colours, bool hasFocus,
           const QWidget* widget) {
    if (says(widget, kBare)) {
        return;
    }
    const bool isWrong = says(widget, kWrong);
    const bool isEnabled = widget == nullptr || widget->isEnabled();
    painter.save();
    if (says(widget, kBoxed)) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setBrush(colours.raised);
        painter.setPen(QPen(hasFocus ? colours.accent : colours.edge, hasFocus ? 2 : 1));
        const qreal in = hasFocus ? 1 : 0.5;
        painter.drawRoundedRect(QRectF(rect).adjusted(in, in, -in, -in), kRound, kRound);
    } else {
        painter.fillRect(rect, isEnabled ? colours.raised : colours.paper);
        const int weight = hasFocus || isWrong ? 2 : 1;
        const QColor line = isWrong     ? colours.must
                            : hasFocus  ? colours.accent
                            : isEnabled ? colours.edge
                                        : colours.rule;
        painter.fillRect(QRect(rect.left(), rect.bottom() + 1 - weight, rect.width(), weight),
                         line);
    }
    painter.restore();
}

void edge(QPainter& painter, const QRect& rect, const Colours& colours) {
    painter.save();
    painter.setPen(QPen(colours.accent, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect.adjusted(0, 0, -1, -1));
    painter.restore();
}

void button(QPainter& painter, const QStyleOptionButton& option, const QWidget* widget) {
    const Colours& c = coloursFor(option.palette);
    const bool isMain = says(widget, kMainButton);
    const bool isDown = option.state & (QStyle::State_Sunken | QStyle::State_On);
    const bool isOver = option.state & QStyle::State_MouseOver;
    const bool isEnabled = option.state & QStyle::State_Enabled;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (says(widget, kQuietButton)) {
        if (isOver || isDown) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(c.picked);
            painter.drawRoundedRect(option.rect, kRound, kRound);
        }
    } else if (isMain && isEnabled) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(isDown ? c.ink : c.accent);
        painter.drawRoundedRect(option.rect, kRound, kRound);
    } else {
        painter.setPen(QPen(isEnabled ? c.edge : c.rule, 1));
        painter.setBrush(isDown || isOver ? c.picked : c.raised);
        painter.drawRoundedRect(crisp(option.rect), kRound, kRound);
    }
    painter.restore();
}

void checkMark(QPainter& painter, const QStyleOption& option) {
    const Colours& c = coloursFor(option.palette);
    const bool isEnabled = option.state & QStyle::State_Enabled;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(isEnabled ? c.edge : c.rule, 1.5));
    painter.setBrush(c.raised);
    const QRectF box = QRectF(option.rect).adjusted(1, 1, -1, -1);
    painter.drawRoundedRect(box, 2, 2);
    const QColor mark = isEnabled ? c.accent : c.quiet;
    if (option.state & QStyle::State_On) {
        painter.setPen(QPen(mark, 2.2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.setBrush(Qt::NoBrush);
        const auto at = [&](qreal x, qreal y) {
            return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
        };
        const QPointF tick[] = {at(0.22, 0.54), at(0.42, 0.74), at(0.78, 0.28)};
        painter.drawPolyline(tick, 3);
    } else if (option.state & QStyle::State_NoChange) {
        painter.fillRect(box.adjusted(4, box.height() / 2 - 1, -4, -box.height() / 2 + 1), mark);
    }
    painter.restore();
}

void radioMark(QPainter& painter, const QStyleOption& option) {
    const Colours& c = coloursFor(option.palette);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(c.edge, 1.5));
    painter.setBrush(c.raised);
    const QRectF ring = QRectF(option.rect).adjusted(1, 1, -1, -1);
    painter.drawEllipse(ring);
    if (option.state & QStyle::State_On) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(c.accent);
        const qreal in = ring.width() * 0.26;
        painter.drawEllipse(ring.adjusted(in, in, -in, -in));
    }
    painter.restore();
}

void chevron(QPainter& painter, const QRect& rect, const QColor& colour, Qt::ArrowType way) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.translate(QRectF(rect).center());
    painter.rotate(way == Qt::DownArrow    ? 0
                   : way == Qt::UpArrow    ? 180
                   : way == Qt::RightArrow ? -90
                                           : 90);
    const QPointF points[] = {{-4, -2}, {0, 2}, {4, -2}};
    painter.drawPolyline(points, 3);
    painter.restore();
}

void scrollBar(QPainter& painter, const QStyleOptionSlider& option, const QRect& handle) {
    const Colours& c = coloursFor(option.palette);
    if (option.maximum <= option.minimum) {
        return;
    }
    const bool isHeld = option.state & QStyle::State_Sunken;
    const bool isOver = option.state & QStyle::State_MouseOver;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(isHeld ? c.accent : isOver ? c.quiet : c.edge);
    const bool isUpright = option.orientation == Qt::Vertical;
    const QRectF bar =
        isUpright ? QRectF(handle).adjusted(4, 2, -2, -2) : QRectF(handle).adjusted(2, 4, -2, -2);
    const qreal round = (isUpright ? bar.width() : bar.height()) / 2;
    painter.drawRoundedRect(bar, round, round);
    painter.restore();
}

void rowGround(QPainter& painter, const QStyleOption& option) {
    const Colours& c = coloursFor(option.palette);
    if (option.state & QStyle::State_Selected) {
        painter.fillRect(option.rect, c.picked);
        if (option.state & QStyle::State_HasFocus) {
            painter.fillRect(QRect(option.rect.topLeft(), QSize(3, option.rect.height())),
                             c.accent);
        }
    }
}

void header(QPainter& painter, const QStyleOptionHeader& option) {
    const Colours& c = coloursFor(option.palette);
    painter.fillRect(option.rect, c.paper);
    painter.fillRect(QRect(option.rect.left(), option.rect.bottom(), option.rect.width(), 1),
                     c.edge);
}

void tab(QPainter& painter, const QStyleOptionTab& option) {
    const Colours& c = coloursFor(option.palette);
    const bool isChosen = option.state & QStyle::State_Selected;
    const int weight = isChosen ? 2 : 1;
    painter.fillRect(
        QRect(option.rect.left(), option.rect.bottom() + 1 - weight, option.rect.width(), weight),
        isChosen ? c.accent : c.rule);
}

void progress(QPainter& painter, const QStyleOptionProgressBar& option) {
    const Colours& c = coloursFor(option.palette);
    const QRect track = option.rect;
    painter.fillRect(track, c.rule);
    const auto span = static_cast<double>(option.maximum) - option.minimum;
    if (span > 0) {
        const double share = (option.progress - option.minimum) / span;
        painter.fillRect(
            QRect(track.left(), track.top(), qRound(track.width() * share), track.height()),
            c.accent);
    }
}

} // namespace headcap::app::controls
