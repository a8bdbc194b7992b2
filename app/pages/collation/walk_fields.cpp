#include "app/pages/collation/walk_fields.h"

#include <QApplication>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/session/words.h"

namespace headcap::app {

WalkFields::WalkFields(QWidget* parent) : QWidget(parent), m_runsOn(new Label(Face::small)) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(kSpace);
    grid->setVerticalSpacing(kGrid);
    grid->addWidget(new Label(Face::small, Ink::quiet, tr("Should be")), 1, 0);
    grid->addWidget(new Label(Face::small, Ink::quiet, tr("As read")), 2, 0);
    m_mark = addColumn(1, tr("Signature"), 2);
    m_recto = addColumn(2, tr("Recto"), 2);
    m_verso = addColumn(3, tr("Verso"), 2);
    m_words = addColumn(4, tr("First words"), 3);
    m_catchword = addColumn(5, tr("Catchword at its foot"), 3);
    grid->addWidget(m_runsOn, 3, 1, 1, 5);
}

WalkFields::Column WalkFields::addColumn(int column, const QString& heading, int stretch) {
    auto* grid = qobject_cast<QGridLayout*>(layout());
    Column made{new Label(Face::formula), new QLineEdit};
    grid->addWidget(new Label(Face::small, Ink::quiet, heading), 0, column);
    grid->addWidget(made.expected, 1, column);
    grid->addWidget(made.field, 2, column);
    grid->setColumnStretch(column, stretch);
    made.field->setAccessibleName(heading);
    made.field->setMinimumWidth(56);
    made.field->installEventFilter(this);
    connect(made.field, &QLineEdit::returnPressed, this, &WalkFields::taken);
    return made;
}

void WalkFields::expect(const core::LeafExpectation& expected, const std::string& catchwordDue,
                        const QString& before) {
    const auto orNone = [](const std::string& text, const QString& none) {
        return text.empty() ? none : fromCore(text);
    };
    m_mark.expected->setText(orNone(expected.mark, tr("unsigned")));
    const QString none = expected.isBlank ? tr("blank") : tr("no number");
    m_recto.expected->setText(orNone(expected.recto, none));
    m_verso.expected->setText(expected.isFolio && expected.verso.empty()
                                  ? QStringLiteral("–")
                                  : orNone(expected.verso, none));
    m_words.expected->setInk(catchwordDue.empty() ? Ink::quiet : Ink::ink);
    m_words.expected->setText(
        orNone(catchwordDue, before.isEmpty() ? QStringLiteral("–")
                                              : tr("the word at the foot of %1v").arg(before)));
    m_catchword.expected->setText(QStringLiteral("–"));
}

void WalkFields::setReading(const core::LeafReading& reading) {
    m_mark.field->setText(fromCore(reading.signature));
    m_recto.field->setText(fromCore(reading.recto));
    m_verso.field->setText(fromCore(reading.verso));
    m_words.field->setText(fromCore(reading.firstWords));
    m_catchword.field->setText(fromCore(reading.catchword));
    setRunsOn(reading.runsOn);
}

core::LeafReading WalkFields::reading() const {
    const auto text = [](const Column& column) { return toCore(column.field->text().trimmed()); };
    return {.signature = text(m_mark),
            .recto = text(m_recto),
            .verso = text(m_verso),
            .catchword = text(m_catchword),
            .firstWords = text(m_words),
            .runsOn = m_runsOnValue};
}

void WalkFields::setRunsOn(core::TextRunsOn runsOn) {
    m_runsOnValue = runsOn;
    m_runsOn->setInk(runsOn == core::TextRunsOn::no ? Ink::must : Ink::settled);
    m_runsOn->setText(runsOn == core::TextRunsOn::yes ? tr("The text runs on from the page before.")
                      : runsOn == core::TextRunsOn::no ? tr("The text breaks here.")
                                                       : QString{});
}

void WalkFields::enter() {
    m_mark.field->setFocus(Qt::OtherFocusReason);
    m_mark.field->selectAll();
}

bool WalkFields::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Escape) {
            if (event->type() == QEvent::ShortcutOverride) {
                event->accept();
                return true;
            }
            Q_EMIT steppedBack();
            return true;
        }
    }
    if (isLeftBy(*event)) {
        Q_EMIT left();
    }
    return QWidget::eventFilter(watched, event);
}

// From one of them to another the reading goes on.
bool WalkFields::isLeftBy(const QEvent& event) const {
    const QWidget* next = QApplication::focusWidget();
    return event.type() == QEvent::FocusOut && (next == nullptr || !isAncestorOf(next));
}

} // namespace headcap::app
