#include "app/shell/bench_line.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/style.h"
#include "app/shell/reason_asker.h"

namespace headcap::app {

BenchLine::BenchLine(QWidget* parent)
    : QWidget(parent), m_chips(new ChipRow(this)), m_line(new QLineEdit(this)),
      m_hint(new Label(Face::small, Ink::quiet, {}, this)), m_asking(new ReasonAsker(this)),
      m_heldBack(new Label(Face::smallStrong, Ink::open)) {
    m_line->setProperty(kBare, true);
    m_line->setFont(faceFont(Face::bench));
    m_line->setMinimumHeight(kBenchControl);
    m_line->setAccessibleName(tr("Bench line"));
    m_line->setPlaceholderText(tr("Type or scan what was done …"));
    m_line->setToolTip(
        tr("As one says it: what was done, where, with which lot and how much of it, "
           "how long (Ctrl+L)"));
    m_line->installEventFilter(this);
    connect(m_line, &QLineEdit::textChanged, this, &BenchLine::readAgain);
    connect(m_line, &QLineEdit::textEdited, this, &BenchLine::offer);
    connect(m_line, &QLineEdit::returnPressed, this, &BenchLine::take);
    connect(m_asking, &ReasonAsker::answered, this, &BenchLine::answer);
    connect(m_asking, &ReasonAsker::leftBack, this, &BenchLine::stopAsking);
    layOut();
}

void BenchLine::layOut() {
    m_hint->hide();
    m_heldBack->setWordWrap(true);
    m_heldBack->hide();
    auto* across = new QHBoxLayout;
    across->addWidget(m_line, 1);
    across->addWidget(m_hint);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(kPageMargin, kGap, kPageMargin, kGap);
    down->setSpacing(0);
    down->addWidget(m_chips);
    down->addLayout(across);
    down->addWidget(m_heldBack);
    down->addWidget(m_asking);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

QLineEdit& BenchLine::reason() {
    return m_asking->reason();
}

void BenchLine::setReader(Reader reader) {
    m_read = std::move(reader);
    readAgain();
}

void BenchLine::readAgain() {
    const bool isEmpty = m_line->text().trimmed().isEmpty();
    m_chips->show(isEmpty || !m_read ? std::vector<LineChip>{} : m_read(m_line->text()));
    m_chips->setVisible(!isEmpty);
    if (m_doubted != m_line->text()) {
        m_doubted.clear();
        m_heldBack->hide();
    }
    if (m_asking->isVisible() &&
        (!m_ask || m_ask(m_line->text(), m_answers) != m_asking->question())) {
        stopAsking();
    }
    sayWhatEnterDoes();
}

// A line that is held back says so before Enter is pressed.
void BenchLine::sayWhatEnterDoes() {
    const QString text = m_line->text();
    const bool isEmpty = text.trimmed().isEmpty();
    m_hint->setVisible(!isEmpty);
    if (isEmpty) {
        return;
    }
    const bool isDoubted = m_doubt && !m_doubt(text).isEmpty();
    m_hint->setText(isDoubted && m_doubted != text        ? tr("Enter asks once more")
                    : isDoubted                           ? tr("Enter again logs it")
                    : m_ask && !m_ask(text, {}).isEmpty() ? tr("Enter asks first")
                                                          : tr("Enter takes it"));
}

void BenchLine::take() {
    if (dropScanned()) {
        return;
    }
    if (m_offers != nullptr && m_offers->isVisible()) {
        if (m_offers->isChosen()) {
            takeOffer(*m_offers->current());
            return;
        }
        m_offers->hide();
    }
    if (m_line->text().trimmed().isEmpty() || !m_take) {
        return;
    }
    if (holdBack()) {
        return;
    }
    m_answers.clear();
    const QString question = m_ask ? m_ask(m_line->text(), m_answers) : QString{};
    if (!question.isEmpty()) {
        m_asking->ask(question);
    } else if (m_take(m_line->text(), {})) {
        m_line->setText({}); // what was taken is no longer the field's to undo
    }
}

bool BenchLine::holdBack() {
    const QString doubt = m_doubt ? m_doubt(m_line->text()) : QString{};
    if (doubt.isEmpty() || m_doubted == m_line->text()) {
        return false;
    }
    m_doubted = m_line->text();
    m_heldBack->setText(doubt);
    m_heldBack->show();
    sayWhatEnterDoes();
    return true;
}

void BenchLine::answer(const QString& answer) {
    m_answers << answer;
    const QString next = m_ask ? m_ask(m_line->text(), m_answers) : QString{};
    if (!next.isEmpty()) {
        m_asking->clear();
        m_asking->ask(next);
    } else if (m_take && m_take(m_line->text(), m_answers)) {
        m_line->setText({}); // what was taken is no longer the field's to undo
        stopAsking();
    } else {
        m_answers.removeLast();
    }
}

void BenchLine::stopAsking() {
    const bool hadFocus = m_asking->reason().hasFocus();
    m_asking->stop();
    m_answers.clear();
    if (m_line->text().isEmpty()) {
        m_asking->clear();
    }
    if (hadFocus) {
        m_line->setFocus(Qt::OtherFocusReason);
    }
}

bool BenchLine::dropScanned() {
    const int at = m_line->cursorPosition();
    const auto from = m_scan ? m_ear.scannedFrom(at) : std::nullopt;
    if (!from) {
        return false;
    }
    const QString text = m_line->text();
    const auto dropped = m_scan(text.left(*from), text.mid(*from, at - *from), text.mid(at));
    if (!dropped) {
        return false;
    }
    if (m_offers != nullptr) {
        m_offers->hide();
    }
    m_line->setText(dropped->line);
    m_line->setCursorPosition(dropped->cursor);
    return true;
}

void BenchLine::typed(QKeyEvent& event) {
    m_line->setFocus(Qt::OtherFocusReason);
    m_line->end(false);
    QKeyEvent here{QEvent::KeyPress, event.key(), event.modifiers(), event.text()};
    QCoreApplication::sendEvent(m_line, &here);
}

bool BenchLine::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut) {
        update();
        if (event->type() == QEvent::FocusOut && m_offers != nullptr) {
            m_offers->hide();
        }
    }
    const bool isPress = event->type() == QEvent::KeyPress;
    if ((isPress || event->type() == QEvent::ShortcutOverride) &&
        isKeyOfTheLine(*static_cast<QKeyEvent*>(event), isPress)) {
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

// Whether the key has been dealt with, before the field and the window have it.
bool BenchLine::isKeyOfTheLine(QKeyEvent& key, bool isPress) {
    // Words that were typed and taken away again come back first; where the line has nothing of
    // its own, the key is the window's.
    const bool isOwn = key.matches(QKeySequence::Undo)   ? m_line->isUndoAvailable()
                       : key.matches(QKeySequence::Redo) ? m_line->isRedoAvailable()
                                                         : true;
    if (!isPress && m_line->text().isEmpty() && !isOwn) {
        key.ignore();
        return true;
    }
    const bool isOffering = m_offers != nullptr && m_offers->isVisible();
    if (isPress && isOffersKey(key)) {
        return true;
    }
    if (isPress) {
        m_ear.hear(key, m_line->cursorPosition());
    }
    // Esc empties the line first; the words can be had back with the field's own undo.
    if (key.key() == Qt::Key_Escape && (isOffering || !m_line->text().isEmpty())) {
        key.accept();
        if (isPress) {
            m_line->selectAll();
            m_line->del();
        }
        return true;
    }
    return false;
}

void BenchLine::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& c = coloursFor(palette());
    painter.fillRect(rect(), c.raised);
    const bool hasFocus = m_line->hasFocus();
    painter.fillRect(QRect(0, 0, width(), hasFocus ? 2 : 1), hasFocus ? c.accent : c.rule);
}

} // namespace headcap::app
