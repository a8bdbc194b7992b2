#include "app/shell/state_bar.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>
#include <QPainter>
#include <QPushButton>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/session/words.h"

namespace headcap::app {

StateBar::StateBar(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_words(new Label(Face::body, Ink::quiet)),
      m_ways(new QHBoxLayout), m_why(new QLineEdit) {
    m_why->setAccessibleName(tr("Reason"));
    connect(m_why, &QLineEdit::returnPressed, this, [this] {
        if (m_waiting) {
            go(*m_waiting);
        }
    });
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(24 * kGrid, kGap, kPageMargin, kGap);
    across->setSpacing(kGap);
    across->addWidget(m_words);
    across->addLayout(m_ways);
    across->addWidget(m_why, 1);
    across->addStretch();
    hide();
}

void StateBar::ask(const core::Job& job, core::Revision read) {
    m_job = job;
    m_read = read;
    m_waiting.reset();
    m_why->hide();
    m_why->clear();
    while (QLayoutItem* item = m_ways->takeAt(0)) {
        item->widget()->deleteLater();
        delete item;
    }
    m_words->setText(tr("From “%1” to").arg(words(job.state)));
    std::vector<core::JobState> others;
    for (const core::JobState state : core::statesAfter(job.state)) {
        if (core::wayBetween(job.state, state) == core::StateWay::forward) {
            addWay(state);
        } else {
            others.push_back(state);
        }
    }
    addOthers(others);
    show();
    if (m_ways->count() > 0) {
        m_ways->itemAt(0)->widget()->setFocus(Qt::TabFocusReason);
    }
}

void StateBar::addWay(core::JobState to) {
    auto* way = new QPushButton(words(to));
    connect(way, &QPushButton::clicked, this, [this, to] { go(to); });
    m_ways->addWidget(way);
}

// Going back, or out of the order of the work: a menu, since each needs a word why.
void StateBar::addOthers(const std::vector<core::JobState>& states) {
    if (states.empty()) {
        return;
    }
    auto* more = new QPushButton(tr("Another, with a reason …"));
    auto* menu = new QMenu(more);
    for (const core::JobState state : states) {
        connect(menu->addAction(words(state)), &QAction::triggered, this,
                [this, state] { go(state); });
    }
    connect(more, &QPushButton::clicked, menu, [menu, more] {
        menu->popup(more->mapToGlobal(QPoint{0, more->height()}));
    });
    m_ways->addWidget(more);
}

void StateBar::go(core::JobState to) {
    auto change = core::changeState(
        *m_job, m_read,
        {to, m_session.person(), m_session.clock().now(), toCore(m_why->text().trimmed())},
        m_session.ids());
    if (!change) {
        // It needs a word why.
        m_waiting = to;
        m_words->setText(tr("To “%1”, because").arg(words(to)));
        for (int i = 0; i < m_ways->count(); ++i) {
            m_ways->itemAt(i)->widget()->hide();
        }
        m_why->show();
        m_why->setFocus(Qt::TabFocusReason);
        return;
    }
    const QString said = fromCore(change->sentence);
    if (m_session.apply(std::move(*change))) {
        hide();
        m_session.say({Notice::Kind::done, said, true});
    }
}

bool StateBar::event(QEvent* event) {
    const bool isKey =
        event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress;
    if (isKey && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept();
        if (event->type() == QEvent::KeyPress) {
            hide();
        }
        return true;
    }
    return QWidget::event(event);
}

void StateBar::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& c = coloursFor(palette());
    painter.fillRect(rect(), c.raised);
    painter.fillRect(QRect(0, height() - 1, width(), 1), c.rule);
}

} // namespace headcap::app
