#include "app/shell/margin_note.h"

#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/session/words.h"
#include "core/values/spoken_time.h"

namespace headcap::app {

MarginNote::MarginNote(const QString& sentence, const QString& below, Ink ink, QWidget* parent)
    : QWidget(parent) {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(kGap, kGrid, kGrid, kGrid);
    down->setSpacing(2);
    auto* first = new Label(Face::smallStrong, ink, sentence);
    first->setWordWrap(true);
    down->addWidget(first);
    if (!below.isEmpty()) {
        auto* second = new Label(Face::small, Ink::quiet, below);
        second->setWordWrap(true);
        down->addWidget(second);
    }
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setAccessibleName(sentence);
    setAccessibleDescription(below);
    setToolTip(tr("Goes there (Enter)"));
}

void MarginNote::paintEvent(QPaintEvent*) {
    if (hasFocus()) {
        QPainter painter{this};
        const Colours& c = coloursFor(palette());
        painter.fillRect(rect(), c.picked);
        painter.fillRect(QRect(0, 0, 3, height()), c.accent);
    }
}

void MarginNote::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        Q_EMIT chosen();
        return;
    case Qt::Key_Down:
        focusNextChild();
        return;
    case Qt::Key_Up:
        focusPreviousChild();
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void MarginNote::mouseReleaseEvent(QMouseEvent*) {
    Q_EMIT chosen();
}

void MarginNote::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void MarginNote::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

SettingBar::SettingBar(const core::SettingTime& time, const QString& clock, const QString& day,
                       QWidget* parent)
    : QWidget(parent), m_time(time), m_what(fromCore(time.what)), m_clock(clock), m_day(day) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void SettingBar::setNow(core::Instant now) {
    m_now = now;
    setAccessibleName(dotted({tr("%1 sets").arg(m_what), m_clock, m_day}));
    update();
}

QSize SettingBar::sizeHint() const {
    const int height = QFontMetrics{faceFont(Face::strong)}.height() +
                       QFontMetrics{faceFont(Face::clock)}.height() +
                       QFontMetrics{faceFont(Face::small)}.height() + 5 * kGrid;
    return {200, height};
}

void SettingBar::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& c = coloursFor(palette());
    const int left = kGap;
    const int wide = width() - 2 * kGap;
    painter.setFont(faceFont(Face::strong));
    painter.setPen(c.ink);
    QFontMetrics metrics = painter.fontMetrics();
    painter.drawText(left, metrics.ascent(),
                     metrics.elidedText(tr("%1 sets").arg(m_what), Qt::ElideRight, wide));
    int y = metrics.height() + kGrid;
    painter.fillRect(QRect(left, y, wide, 2 * kGrid), c.rule);
    painter.fillRect(QRect(left, y, qRound(wide * core::shareLeft(m_time, m_now)), 2 * kGrid),
                     c.accent);
    y += 3 * kGrid;
    painter.setFont(faceFont(Face::clock));
    metrics = painter.fontMetrics();
    painter.drawText(left, y + metrics.ascent(), m_clock);
    y += metrics.height();
    painter.setFont(faceFont(Face::small));
    painter.setPen(c.quiet);
    const core::Minutes leftOver = core::leftOf(m_time, m_now);
    const QString remaining = leftOver > core::Minutes{0}
                                  ? tr("%1 left").arg(fromCore(core::toText(leftOver)))
                                  : QString{};
    painter.drawText(left, y + painter.fontMetrics().ascent(), dotted({m_day, remaining}));
}

} // namespace headcap::app
