#include "app/photo/large_view.h"

#include <algorithm>

#include <QKeyEvent>
#include <QPainter>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/look/palette.h"
#include "app/photo/photo_delegate.h"
#include "app/print/photo_loader.h"
#include "app/session/words.h"

namespace headcap::app::photo {

LargeView::LargeView(print::PhotoLoader& loader, QWidget* parent)
    : QWidget(parent), m_loader(loader) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Photograph, large"));
    parent->installEventFilter(this);
    hide();
    connect(&loader, &print::PhotoLoader::ready, this, [this] { update(); });
    connect(&loader, &print::PhotoLoader::failed, this, [this] { update(); });
}

void LargeView::open(std::vector<core::Photograph> photographs,
                     const core::Id<core::Photograph>& at) {
    m_photographs = std::move(photographs);
    const auto found = std::ranges::find(m_photographs, at, &core::Photograph::id);
    if (found == m_photographs.end()) {
        return;
    }
    m_at = static_cast<std::size_t>(found - m_photographs.begin());
    setAccessibleDescription(titleOf(current()));
    setGeometry(parentWidget()->rect());
    raise();
    show();
    setFocus(Qt::OtherFocusReason);
}

void LargeView::go(std::size_t to) {
    if (to < m_photographs.size() && to != m_at) {
        m_at = to;
        setAccessibleDescription(titleOf(current()));
        m_loader.forgetWaiting();
        update();
        Q_EMIT moved();
    }
}

void LargeView::close() {
    hide();
    Q_EMIT closed();
}

bool LargeView::event(QEvent* event) {
    // Esc steps back from here first, not from the job.
    if (event->type() == QEvent::ShortcutOverride &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept();
        return true;
    }
    return QWidget::event(event);
}

bool LargeView::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parentWidget() && event->type() == QEvent::Resize) {
        setGeometry(parentWidget()->rect());
    }
    return QWidget::eventFilter(watched, event);
}

void LargeView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Escape:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        close();
        return;
    case Qt::Key_Left:
    case Qt::Key_Up:
        go(m_at == 0 ? 0 : m_at - 1);
        return;
    case Qt::Key_Right:
    case Qt::Key_Down:
    case Qt::Key_Space:
        go(m_at + 1);
        return;
    case Qt::Key_Home:
        go(0);
        return;
    case Qt::Key_End:
        go(m_photographs.size() - 1);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void LargeView::mouseReleaseEvent(QMouseEvent*) {
    close();
}

void LargeView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Colours& c = coloursFor(palette());
    painter.fillRect(rect(), c.paper);
    if (m_photographs.empty()) {
        return;
    }
    const core::Photograph& photo = current();
    const QFontMetrics caption{faceFont(Face::formula)};
    const QFontMetrics small{faceFont(Face::small)};
    const int foot = caption.height() + small.height() + 3 * kGap;
    const QRect inner = rect().adjusted(kPageMargin, kGap, -kPageMargin, -kGap);
    paintPhoto(painter, inner.adjusted(0, 0, 0, -foot), photo, m_loader, Qt::AlignCenter, *this);

    int y = inner.bottom() - foot + kGap + caption.ascent();
    painter.setFont(faceFont(Face::formula));
    painter.setPen(c.ink);
    painter.drawText(inner.left(), y,
                     caption.elidedText(titleOf(photo), Qt::ElideRight, inner.width()));
    QStringList parts{words(photo.role), fromCore(photo.place),
                      tr("%1 of %2").arg(m_at + 1).arg(m_photographs.size()),
                      tr("Left and Right: the others; Esc: back")};
    y += caption.descent() + small.ascent() + kGrid;
    painter.setFont(faceFont(Face::small));
    painter.setPen(c.quiet);
    painter.drawText(inner.left(), y,
                     small.elidedText(dotted(parts), Qt::ElideRight, inner.width()));
}

} // namespace headcap::app::photo
