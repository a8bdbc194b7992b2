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

namespace headcap::app {
namespace {

// Between two keys of a scanner that types; a hand is slower.
constexpr qint64 kScannerMs = 35;
constexpr int kLeastScanned = 4;

} // namespace

BenchLine::BenchLine(QWidget* parent)
    : QWidget(parent), m_chips(new ChipRow(this)), m_line(new QLineEdit(this)),
      m_hint(new Label(Face::small, Ink::quiet, tr("Enter takes it"), this)),
      m_asking(new QWidget(this)), m_question(new Label(Face::smallStrong, Ink::open)),
      m_heldBack(new Label(Face::smallStrong, Ink::open)), m_reason(new QLineEdit) {
    m_line->setProperty(kBare, true);
    m_line->setFont(faceFont(Face::bench));
    m_line->setMinimumHeight(kBenchControl);
    m_line->setAccessibleName(tr("Bench line"));
    m_line->setPlaceholderText(tr("Type or scan what was done …"));
    m_line->setToolTip(tr("As one says it: guarded K7 with paste 31-006 0.6 g 18 min (Ctrl+L)"));
    m_line->installEventFilter(this);
    m_hint->hide();
    m_machine.start();
    m_elapsed = [this] { return m_machine.elapsed(); };
    connect(m_line, &QLineEdit::textChanged, this, &BenchLine::readAgain);
    connect(m_line, &QLineEdit::textEdited, this, &BenchLine::offer);
    connect(m_line, &QLineEdit::returnPressed, this, &BenchLine::take);

    m_reason->setMinimumHeight(kBenchControl);
    m_reason->setPlaceholderText(tr("used because … (Enter logs it, Esc goes back to the line)"));
    m_reason->setAccessibleName(tr("Why it is used all the same"));
    m_reason->installEventFilter(this);
    connect(m_reason, &QLineEdit::returnPressed, this, &BenchLine::takeWithReason);
    auto* asked = new QVBoxLayout(m_asking);
    asked->setContentsMargins(0, 0, 0, 0);
    asked->setSpacing(0);
    asked->addWidget(m_question);
    asked->addWidget(m_reason);
    m_asking->hide();

    auto* across = new QHBoxLayout;
    across->addWidget(m_line, 1);
    across->addWidget(m_hint);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(kPageMargin, kGap, kPageMargin, kGap);
    down->setSpacing(0);
    down->addWidget(m_chips);
    down->addLayout(across);
    m_heldBack->setWordWrap(true);
    m_heldBack->hide();
    down->addWidget(m_heldBack);
    down->addWidget(m_asking);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void BenchLine::setReader(Reader reader) {
    m_read = std::move(reader);
    readAgain();
}

void BenchLine::readAgain() {
    const bool isEmpty = m_line->text().trimmed().isEmpty();
    m_chips->show(isEmpty || !m_read ? std::vector<LineChip>{} : m_read(m_line->text()));
    m_hint->setVisible(!isEmpty);
    m_chips->setVisible(!isEmpty);
    if (m_doubted != m_line->text()) {
        m_doubted.clear();
        m_heldBack->hide();
    }
    if (m_asking->isVisible() && (!m_ask || m_ask(m_line->text()) != m_question->text())) {
        stopAsking();
    }
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
    const QString question = m_ask ? m_ask(m_line->text()) : QString{};
    if (!question.isEmpty()) {
        m_question->setText(question);
        m_asking->show();
        m_reason->setFocus(Qt::OtherFocusReason);
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
    return true;
}

void BenchLine::takeWithReason() {
    const QString reason = m_reason->text().trimmed();
    if (!reason.isEmpty() && m_take && m_take(m_line->text(), reason)) {
        m_line->setText({}); // what was taken is no longer the field's to undo
        stopAsking();
    }
}

// The reason typed so far stays, should the line be taken after all.
void BenchLine::stopAsking() {
    const bool hadFocus = m_reason->hasFocus();
    m_asking->hide();
    if (m_line->text().isEmpty()) {
        m_reason->clear();
    }
    if (hadFocus) {
        m_line->setFocus(Qt::OtherFocusReason);
    }
}

void BenchLine::offer() {
    if (!m_complete || !m_line->hasFocus()) {
        return;
    }
    if (m_offers == nullptr) {
        m_offers = new LineOffers(window());
        connect(m_offers, &LineOffers::taken, this, &BenchLine::takeOffer);
    }
    // What has been understood so far stays in sight.
    m_offers->show(m_complete(m_line->text().left(m_line->cursorPosition())), *m_line, *this);
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
        takeOffer(*m_offers->current());
        return true;
    case Qt::Key_Escape:
        m_offers->hide();
        return true;
    default:
        return false;
    }
}

void BenchLine::noteKey(const QKeyEvent& event) {
    if (event.text().isEmpty() || !event.text().front().isPrint()) {
        return;
    }
    const qint64 now = m_elapsed();
    if (now - m_lastKey > kScannerMs) {
        m_burst = m_line->cursorPosition();
    }
    m_lastKey = now;
}

bool BenchLine::dropScanned() {
    const int at = m_line->cursorPosition();
    if (!m_scan || m_elapsed() - m_lastKey > kScannerMs || at - m_burst < kLeastScanned) {
        return false;
    }
    const QString text = m_line->text();
    const auto dropped = m_scan(text.left(m_burst), text.mid(m_burst, at - m_burst), text.mid(at));
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
    if (watched == m_reason) {
        const bool isKey =
            event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress;
        if (isKey && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
            event->accept();
            if (event->type() == QEvent::KeyPress) {
                stopAsking();
            }
            return true;
        }
        return QWidget::eventFilter(watched, event);
    }
    if (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut) {
        update();
        if (event->type() == QEvent::FocusOut && m_offers != nullptr) {
            m_offers->hide();
        }
    }
    if (event->type() != QEvent::ShortcutOverride && event->type() != QEvent::KeyPress) {
        return QWidget::eventFilter(watched, event);
    }
    const auto& key = *static_cast<QKeyEvent*>(event);
    const bool isPress = event->type() == QEvent::KeyPress;
    // Words that were typed and taken away again come back first; where the line has nothing of
    // its own, the key is the window's.
    const bool isOwn = key.matches(QKeySequence::Undo)   ? m_line->isUndoAvailable()
                       : key.matches(QKeySequence::Redo) ? m_line->isRedoAvailable()
                                                         : true;
    if (!isPress && m_line->text().isEmpty() && !isOwn) {
        event->ignore();
        return true;
    }
    const bool isOffering = m_offers != nullptr && m_offers->isVisible();
    if (isPress && isOffersKey(key)) {
        return true;
    }
    if (isPress) {
        noteKey(key);
    }
    // Esc empties the line first; the words can be had back with the field's own undo.
    if (key.key() == Qt::Key_Escape && (isOffering || !m_line->text().isEmpty())) {
        event->accept();
        if (isPress) {
            m_line->selectAll();
            m_line->del();
        }
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void BenchLine::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& c = coloursFor(palette());
    painter.fillRect(rect(), c.raised);
    const bool hasFocus = m_line->hasFocus();
    painter.fillRect(QRect(0, 0, width(), hasFocus ? 2 : 1), hasFocus ? c.accent : c.rule);
}

} // namespace headcap::app
