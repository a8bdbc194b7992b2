// What a field offers while it is written in, and the keys it takes for itself.
#include <QComboBox>
#include <QCompleter>
#include <QKeyEvent>
#include <QLineEdit>
#include <QStringListModel>

#include "app/form/field_row.h"
#include "app/form/form_base.h"

namespace headcap::app {

void FieldRow::complete() {
    if (m_choices) {
        offer(m_choices());
    } else if (m_matches) {
        offer(m_matches(text() == m_shown ? QString{} : text()));
    }
}

void FieldRow::offer(const QStringList& words) {
    auto* line = qobject_cast<QLineEdit*>(m_control);
    if (line == nullptr) {
        return;
    }
    if (line->completer() == nullptr) {
        auto* completer = new QCompleter(this);
        completer->setModel(new QStringListModel(completer));
        completer->setCaseSensitivity(Qt::CaseInsensitive);
        completer->setFilterMode(Qt::MatchContains);
        if (m_matches) {
            completer->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
        }
        line->setCompleter(completer);
    }
    qobject_cast<QStringListModel*>(line->completer()->model())->setStringList(words);
}

FieldRow& FieldRow::completed(std::function<QStringList()> choices) {
    m_choices = std::move(choices);
    return *this;
}

FieldRow& FieldRow::searched(std::function<QStringList(const QString&)> matches) {
    m_matches = std::move(matches);
    return *this;
}

// Led into the field by the program, one goes on behind what stands there.
void FieldRow::goToEnd(Qt::FocusReason reason) {
    auto* line = qobject_cast<QLineEdit*>(m_control);
    const bool isLed = reason == Qt::OtherFocusReason || reason == Qt::ShortcutFocusReason;
    if (line != nullptr && isLed && !line->hasSelectedText()) {
        line->end(false);
    }
}

// What can't be kept is taken back by it, where the form keeps by itself.
bool FieldRow::isEscOfMine(const QKeyEvent& key) const {
    const auto* form = qobject_cast<const FormBase*>(parentWidget());
    return key.key() == Qt::Key_Escape && (m_hasError || m_isConflicted) && form != nullptr &&
           form->takesBack();
}

bool FieldRow::isKeyOfMine(const QKeyEvent& key) {
    if (isEscOfMine(key)) {
        takeBack();
        return true;
    }
    auto* line = qobject_cast<QLineEdit*>(m_control);
    if (key.key() == Qt::Key_Down && line != nullptr && line->completer() != nullptr) {
        line->completer()->setCompletionPrefix(line->text() == m_shown ? QString{} : line->text());
        line->completer()->complete();
        return true;
    }
    return false;
}

bool FieldRow::eventFilter(QObject* watched, QEvent* event) {
    switch (event->type()) {
    case QEvent::FocusIn:
        complete();
        goToEnd(static_cast<QFocusEvent*>(event)->reason());
        break;
    case QEvent::FocusOut:
        if (static_cast<QFocusEvent*>(event)->reason() != Qt::PopupFocusReason && isEdited()) {
            // After the control has done with losing it.
            QMetaObject::invokeMethod(this, &FieldRow::left, Qt::QueuedConnection);
        }
        break;
    case QEvent::Wheel:
        // The page scrolls; nothing changes under the wheel.
        if (qobject_cast<QComboBox*>(m_control) != nullptr) {
            event->ignore();
            return true;
        }
        break;
    case QEvent::ShortcutOverride:
        if (isEscOfMine(*static_cast<QKeyEvent*>(event))) {
            event->accept();
            return true;
        }
        // A field as it is kept has nothing of its own to undo: the key is the window's.
        if ((static_cast<QKeyEvent*>(event)->matches(QKeySequence::Undo) ||
             static_cast<QKeyEvent*>(event)->matches(QKeySequence::Redo)) &&
            !isEdited()) {
            event->ignore();
            return true;
        }
        break;
    case QEvent::KeyPress:
        if (isKeyOfMine(*static_cast<QKeyEvent*>(event))) {
            return true;
        }
        break;
    default:
        break;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace headcap::app
