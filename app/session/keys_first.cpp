#include "app/session/keys_first.h"

#include <QApplication>
#include <QKeyEvent>
#include <QSet>

#include "app/session/actions.h"

namespace headcap::app {
namespace {

// Those with Ctrl of the window and of a job: a list's and a day's keys are no keys of a field.
QSet<int> ownKeys() {
    QSet<int> keys;
    for (const ActionEntry& entry : actionTable()) {
        const bool isOfTheWindow = entry.place == Place::everywhere || entry.place == Place::job;
        if (!isOfTheWindow || entry.id == ActionId::undo || entry.id == ActionId::redo) {
            continue;
        }
        for (const QKeySequence& sequence : keysOf(entry.id)) {
            const QKeyCombination key = sequence[0];
            if (key.keyboardModifiers().testFlag(Qt::ControlModifier)) {
                keys.insert(key.toCombined());
            }
        }
    }
    return keys;
}

} // namespace

KeysFirst::KeysFirst(QObject* parent) : QObject(parent) {
    QCoreApplication::instance()->installEventFilter(this);
}

bool KeysFirst::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && watched->isWidgetType()) {
        if (QApplication::activePopupWidget() != nullptr &&
            static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
            event->accept(); // it closes the list that is open, and no page
            return true;
        }
        static const QSet<int> kOwn = ownKeys();
        if (kOwn.contains(static_cast<QKeyEvent*>(event)->keyCombination().toCombined())) {
            event->ignore();
            return true; // no control may claim it
        }
    }
    return QObject::eventFilter(watched, event);
}

} // namespace headcap::app
