#include "app/shell/station.h"

#include <QPainter>
#include <QPainterPath>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/look/palette.h"
#include "app/pages/job_page.h"
#include "app/session/actions.h"

namespace headcap::app {
namespace {

constexpr qreal kKnot = 6.5; // radius
constexpr int kKnotX = 26;
constexpr int kWordsX = 42;
constexpr int kHeight = 64;

ActionId actionOf(core::Page page) {
    return static_cast<ActionId>(static_cast<int>(ActionId::toBook) + static_cast<int>(page));
}

QString openWords(const core::PageState& state) {
    const auto open = static_cast<int>(state.mustSettle + state.worthKnowing);
    return open == 0 ? QString{} : Station::tr("%1 open").arg(open);
}

QString progressWords(core::PageProgress progress) {
    switch (progress) {
    case core::PageProgress::notBegun:
        return Station::tr("not begun");
    case core::PageProgress::begun:
        return Station::tr("begun");
    case core::PageProgress::settled:
        return Station::tr("settled");
    }
    return {};
}

void paintKnot(QPainter& painter, QPointF at, core::PageProgress progress, const Colours& c) {
    const QRectF round{at.x() - kKnot, at.y() - kKnot, 2 * kKnot, 2 * kKnot};
    const bool isSettled = progress == core::PageProgress::settled;
    const QColor line = isSettled ? c.settled : c.ink;
    painter.setPen(QPen(line, 1.6));
    painter.setBrush(isSettled ? c.settled : c.paper);
    painter.drawEllipse(round);
    if (progress == core::PageProgress::begun) {
        QPainterPath half;
        half.moveTo(at);
        half.arcTo(round, 90, 180);
        painter.setPen(Qt::NoPen);
        painter.setBrush(line);
        painter.drawPath(half);
    }
}

} // namespace

Station::Station(core::Page page, QWidget* parent) : QAbstractButton(parent) {
    m_state.page = page;
    setCheckable(true);
    setAutoExclusive(true);
    setToolTip(tipOf(actionOf(page)));
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    show(m_state);
}

void Station::show(const core::PageState& state) {
    m_state = state;
    const QString open = openWords(state);
    setAccessibleName(titleOf(state.page));
    setAccessibleDescription(open.isEmpty()
                                 ? progressWords(state.progress)
                                 : tr("%1, %2").arg(progressWords(state.progress), open));
    update();
}

QSize Station::sizeHint() const {
    const QFontMetrics small{faceFont(Face::small)};
    int widest = 0;
    for (int i = 0; i < 8; ++i) {
        const QFontMetrics strong{faceFont(Face::smallStrong)};
        widest = std::max(widest, strong.horizontalAdvance(titleOf(static_cast<core::Page>(i))));
    }
    return {kWordsX + widest + kGap, std::max(kHeight, 2 * small.height() + 4 * kGrid)};
}

QPointF Station::knot() const {
    return {static_cast<qreal>(kKnotX), height() / 2.0 - kGap};
}

void Station::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursFor(palette());
    const QPointF at = knot();
    if (isChecked()) {
        painter.fillRect(QRectF(0, at.y() - 18, 3, 36), c.accent);
    }
    paintKnot(painter, at, m_state.progress, c);

    painter.setFont(faceFont(isChecked() ? Face::smallStrong : Face::small));
    painter.setPen(isChecked() ? c.accent : underMouse() ? c.accent : c.ink);
    const QFontMetrics metrics = painter.fontMetrics();
    const qreal baseline = at.y() + metrics.capHeight() / 2.0;
    const QString title = titleOf(m_state.page);
    painter.drawText(QPointF(kWordsX, baseline), title);
    if (hasFocus()) {
        painter.setPen(QPen(c.accent, 2));
        painter.setBrush(Qt::NoBrush); // the knot left its own
        painter.drawRoundedRect(QRectF(kWordsX - 5, at.y() - metrics.height() / 2.0 - 2,
                                       metrics.horizontalAdvance(title) + 10, metrics.height() + 4),
                                3, 3);
    }
    const QString open = openWords(m_state);
    if (!open.isEmpty()) {
        painter.setFont(faceFont(Face::smallStrong));
        painter.setPen(m_state.mustSettle > 0 ? c.must : c.open);
        painter.drawText(QPointF(kWordsX, baseline + metrics.height() - 1), open);
    }
}

} // namespace headcap::app
