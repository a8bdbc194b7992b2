// What the words of the bench line may become, and the keys that take one of them.
#include <QKeyEvent>
#include <QLineEdit>

#include "app/shell/bench_line.h"

namespace headcap::app {

void BenchLine::offer() {
    if (!m_complete || !m_line->hasFocus()) {
        return;
    }
    if (m_offers == nullptr) {
        m_offers = new LineOffers(window());
        connect(m_offers, &LineOffers::taken, this, &BenchLine::takeOffer);
    }
    // What has been understood so far stays in sight.
    const QString typed = m_line->text().left(m_line->cursorPosition());
    m_offers->show(m_complete(typed), typed, *m_line, *this);
}

void BenchLine::takeOffer(const LineOffer& offer) {
    const QString after = m_line->text().mid(m_line->cursorPosition());
    const QString line = offer.line;
    m_offers->hide();
    m_line->setText(line + after);
    m_line->setCursorPosition(static_cast<int>(line.size()));
    m_line->setFocus(Qt::OtherFocusReason);
}

// Down, Up and Tab among what is offered; Esc sends it away first.
bool BenchLine::isOffersKey(const QKeyEvent& event) {
    if (m_offers == nullptr || !m_offers->isVisible()) {
        return false;
    }
    switch (event.key()) {
    case Qt::Key_Down:
    case Qt::Key_Up:
        m_offers->move(event.key() == Qt::Key_Down ? 1 : -1);
        return true;
    case Qt::Key_Tab:
        if (m_offers->isTakenByTab()) {
            takeOffer(*m_offers->current());
            return true;
        }
        return false; // the word stays as it is
    case Qt::Key_Escape:
        m_offers->hide();
        return true;
    default:
        return false;
    }
}

} // namespace headcap::app
