#include "app/pages/proposal/option_head.h"

#include <QKeyEvent>
#include <QPainter>

#include "app/look/fonts.h"
#include "app/look/grid.h"

namespace headcap::app {

OptionHead::OptionHead(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    setCursor(Qt::PointingHandCursor);
}

void OptionHead::show(const Words& words, bool isChosen) {
    m_words = words;
    m_isChosen = isChosen;
    setAccessibleName(
        words.below.isEmpty() ? words.name : QStringLiteral("%1, %2").arg(words.name, words.below));
    setAccessibleDescription(isChosen ? tr("shown below") : QString{});
    update();
}

QSize OptionHead::sizeHint() const {
    return {120, QFontMetrics{faceFont(Face::slip)}.height() +
                     QFontMetrics{faceFont(Face::smallStrong)}.height() + 4 * kGrid};
}

void OptionHead::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& c = coloursFor(palette());
    if (m_isChosen) {
        painter.fillRect(rect(), c.picked);
    }
    painter.fillRect(QRect(0, 0, width(), m_isChosen ? 3 : 1), m_isChosen ? c.accent : c.rule);
    if (hasFocus()) {
        painter.setPen(QPen{c.accent, 1});
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
    const int wide = width() - 2 * kGap;
    painter.setFont(faceFont(Face::slip));
    painter.setPen(c.ink);
    QFontMetrics metrics = painter.fontMetrics();
    const QString name = m_words.name.isEmpty() ? tr("not named") : m_words.name;
    painter.drawText(kGap, 2 * kGrid + metrics.ascent(),
                     metrics.elidedText(name, Qt::ElideRight, wide));
    const int y = 2 * kGrid + metrics.height();
    painter.setFont(faceFont(Face::smallStrong));
    painter.setPen(colourOf(c, m_words.belowInk));
    metrics = painter.fontMetrics();
    painter.drawText(kGap, y + metrics.ascent(),
                     metrics.elidedText(m_words.below, Qt::ElideRight, wide));
}

void OptionHead::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Space:
        Q_EMIT chosen();
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        Q_EMIT chosen();
        Q_EMIT opened();
        return;
    case Qt::Key_Left:
        Q_EMIT stepAsked(-1);
        return;
    case Qt::Key_Right:
        Q_EMIT stepAsked(1);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void OptionHead::mousePressEvent(QMouseEvent*) {
    Q_EMIT chosen();
}

void OptionHead::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void OptionHead::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

} // namespace headcap::app
