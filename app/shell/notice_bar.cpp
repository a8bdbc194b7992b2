#include "app/shell/notice_bar.h"

#include <QAccessible>
#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/session/actions.h"

namespace headcap::app {
namespace {

constexpr int kStaysMs = 8'000;
constexpr int kAround = 2 * kGrid; // above and below it
constexpr int kWidest = 860;

} // namespace

NoticeBar::NoticeBar(Session& session, QWidget* parent)
    : QWidget(parent), m_words(new Label(Face::body)),
      m_undo(quietButton(tr("Undo"), tipOf(ActionId::undo))),
      m_close(quietButton(QStringLiteral("×"), tr("Closes the notice"))),
      m_going(new QTimer(this)) {
    m_words->setWordWrap(true);
    m_close->setAccessibleName(tr("Close the notice"));
    auto* across = new QHBoxLayout(this);
    across->addWidget(m_words, 1);
    across->addWidget(m_undo);
    across->addWidget(m_close);
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Fixed};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    m_going->setSingleShot(true);
    connect(m_going, &QTimer::timeout, this, &QWidget::hide);
    connect(m_close, &QPushButton::clicked, this, &QWidget::hide);
    connect(m_undo, &QPushButton::clicked, &session, &Session::undo);
    connect(&session, &Session::said, this, &NoticeBar::show);
    connect(&session, &Session::personChanged, this, &NoticeBar::putAway); // who was asked for
    connect(&session, &Session::changed, this, &NoticeBar::putAway);       // what it stood against
    qApp->installEventFilter(this);
    hide();
}

void NoticeBar::setLeft(int left) {
    m_left = left;
    fit();
}

// Esc takes back what was refused, or steps out of it: the sentence goes with it.
bool NoticeBar::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress && isVisible() &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        putAway();
    }
    return QWidget::eventFilter(watched, event);
}

// Its words inside the frame that is painted.
void NoticeBar::fit() {
    const int right = std::max(m_left, width() - m_left - kWidest);
    layout()->setContentsMargins(m_left + kSpace, kAround + kGrid, right + kGrid, kAround + kGrid);
}

void NoticeBar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

QString NoticeBar::sentence() const {
    return isHidden() ? QString{} : m_words->text();
}

void NoticeBar::putAway() {
    if (m_kind == Notice::Kind::refused) {
        hide();
    }
}

void NoticeBar::show(const Notice& notice) {
    m_kind = notice.kind;
    m_words->setText(notice.sentence);
    m_words->setInk(notice.kind == Notice::Kind::done ? Ink::ink : Ink::must);
    setAccessibleName(notice.sentence);
    m_undo->setVisible(notice.offersUndo);
    if (notice.kind == Notice::Kind::done) {
        m_going->start(kStaysMs);
    } else {
        m_going->stop();
    }
    QWidget::show();
    QTimer::singleShot(0, this, &NoticeBar::revealFocus); // when the room has been given
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

// The field that is being written may have come to lie below the edge.
void NoticeBar::revealFocus() {
    QWidget* at = QApplication::focusWidget();
    for (QWidget* up = at; up != nullptr; up = up->parentWidget()) {
        if (auto* scroll = qobject_cast<QScrollArea*>(up)) {
            scroll->ensureWidgetVisible(at, 0, kGap);
        }
    }
}

void NoticeBar::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursFor(palette());
    const bool isDone = m_kind == Notice::Kind::done;
    painter.setPen(QPen(isDone ? c.edge : c.must, 1));
    painter.setBrush(c.raised);
    const QMargins in = layout()->contentsMargins();
    const QRect all = rect().adjusted(in.left() - kSpace, kAround, kGrid - in.right(), -kAround);
    painter.drawRoundedRect(QRectF(all).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    painter.fillRect(QRect(all.left(), all.top() + 3, 4, all.height() - 6),
                     isDone ? c.settled : c.must);
}

} // namespace headcap::app
