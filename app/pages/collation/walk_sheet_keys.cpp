#include <QKeyEvent>
#include <QLineEdit>

#include "app/pages/collation/walk_fields.h"
#include "app/pages/collation/walk_sheet.h"

namespace headcap::app {

void WalkSheet::act(WalkAction action) {
    using core::TextRunsOn;
    switch (action) {
    case WalkAction::leaf:
        m_walker.asExpected();
        return;
    case WalkAction::gathering:
        m_walker.restAsExpected();
        return;
    case WalkAction::back:
        m_walker.back();
        return;
    case WalkAction::read:
        m_fields->enter();
        return;
    case WalkAction::runsOn:
    case WalkAction::breaks:
        m_fields->setRunsOn(action == WalkAction::runsOn ? TextRunsOn::yes : TextRunsOn::no);
        takeReading();
        return;
    default:
        break;
    }
    const auto kind = kindOf(action);
    if (!kind) {
        return;
    }
    if (const auto finding = m_walker.find(*kind)) {
        startNote(*finding, *kind);
    }
}

void WalkSheet::keyPressEvent(QKeyEvent* event) {
    if (!m_walker.here() && event->key() == Qt::Key_Return) {
        m_walker.finish();
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        m_walker.leave();
        return;
    }
    if (const auto action = walkAction(*event)) {
        act(*action);
        return;
    }
    QWidget::keyPressEvent(event);
}

bool WalkSheet::event(QEvent* event) {
    // Esc is the window's step back everywhere else.
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Escape || walkAction(*key)) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

bool WalkSheet::eventFilter(QObject* watched, QEvent* event) {
    const bool isKey =
        event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress;
    if (watched == m_note && isKey && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept();
        if (event->type() == QEvent::KeyPress) {
            takeNote(false);
        }
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace headcap::app
