#include "app/shell/reason_asker.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"

namespace headcap::app {

ReasonAsker::ReasonAsker(QWidget* parent)
    : QWidget(parent), m_question(new Label(Face::smallStrong, Ink::open)),
      m_reason(new QLineEdit) {
    m_question->setWordWrap(true);
    m_reason->setMinimumHeight(kBenchControl);
    m_reason->setPlaceholderText(tr("your answer … (Enter logs it, Esc goes back to the line)"));
    m_reason->setAccessibleName(tr("Your answer"));
    m_reason->installEventFilter(this);
    connect(m_reason, &QLineEdit::returnPressed, this, [this] {
        if (const QString reason = m_reason->text().trimmed(); !reason.isEmpty()) {
            Q_EMIT answered(reason);
        }
    });
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addWidget(m_question);
    down->addWidget(m_reason);
    hide();
}

void ReasonAsker::ask(const QString& question) {
    m_question->setText(question);
    m_reason->setAccessibleDescription(question);
    show();
    m_reason->setFocus(Qt::OtherFocusReason);
}

QString ReasonAsker::question() const {
    return m_question->text();
}

void ReasonAsker::clear() {
    m_reason->clear();
}

bool ReasonAsker::eventFilter(QObject* watched, QEvent* event) {
    const bool isKey =
        event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress;
    if (watched == m_reason && isKey && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept();
        if (event->type() == QEvent::KeyPress) {
            Q_EMIT leftBack();
        }
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace headcap::app
