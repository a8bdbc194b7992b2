#include "app/shell/notice_bar.h"

#include <QAccessible>
#include <QEvent>
#include <QGraphicsDropShadowEffect>
#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QTimer>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/session/actions.h"

namespace headcap::app {
namespace {

constexpr int kStaysMs = 8'000;
constexpr int kWidest = 760;

} // namespace

NoticeBar::NoticeBar(Session& session, QWidget* parent)
    : QWidget(parent), m_words(new Label(Face::body)),
      m_undo(quietButton(tr("Undo"), tipOf(ActionId::undo))),
      m_close(quietButton(QStringLiteral("×"), tr("Closes the notice"))),
      m_going(new QTimer(this)) {
    m_words->setWordWrap(true);
    m_close->setAccessibleName(tr("Close the notice"));
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(kSpace, kGrid, kGrid, kGrid);
    across->addWidget(m_words, 1);
    across->addWidget(m_undo);
    across->addWidget(m_close);
    auto* shadow = new QGraphicsDropShadowEffect(this);
    shadow->setBlurRadius(24);
    shadow->setOffset(0, 4);
    shadow->setColor(QColor{0, 0, 0, 60});
    setGraphicsEffect(shadow);
    m_going->setSingleShot(true);
    connect(m_going, &QTimer::timeout, this, &QWidget::hide);
    connect(m_close, &QPushButton::clicked, this, &QWidget::hide);
    connect(m_undo, &QPushButton::clicked, &session, &Session::undo);
    connect(&session, &Session::said, this, &NoticeBar::show);
    connect(&session, &Session::personChanged, this, &NoticeBar::putAway); // who was asked for
    parent->installEventFilter(this);
    hide();
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
    place(m_aboveFoot);
    raise();
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

void NoticeBar::place(int aboveFoot) {
    m_aboveFoot = aboveFoot;
    if (isHidden()) {
        return; // it is placed when it is shown
    }
    const QWidget* window = parentWidget();
    const int width = std::min(kWidest, window->width() - 2 * kSection);
    layout()->invalidate(); // its words may be others than those it was measured with
    const int height =
        layout()->hasHeightForWidth() ? layout()->heightForWidth(width) : sizeHint().height();
    setGeometry((window->width() - width) / 2, window->height() - aboveFoot - height - kSpace,
                width, height);
}

bool NoticeBar::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parentWidget() && event->type() == QEvent::Resize && isVisible()) {
        place(m_aboveFoot);
    }
    return QWidget::eventFilter(watched, event);
}

void NoticeBar::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursFor(palette());
    const bool isDone = m_kind == Notice::Kind::done;
    painter.setPen(QPen(isDone ? c.edge : c.must, 1));
    painter.setBrush(c.raised);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    painter.fillRect(QRect(0, 3, 4, height() - 6), isDone ? c.settled : c.must);
}

} // namespace headcap::app
