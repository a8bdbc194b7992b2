#include "app/shell/worklist_head.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/look/style.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "app/shell/person_menu.h"

namespace headcap::app {
WorklistHead::WorklistHead(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_title(new Label(Face::title, Ink::ink)),
      m_summary(new Label(Face::body, Ink::quiet)), m_find(new QLineEdit),
      m_newJob(new QPushButton(wordsOf(ActionId::newJob))),
      m_person(quietButton({}, tipOf(ActionId::choosePerson))),
      m_all(quietButton(wordsOf(ActionId::allJobs), tipOf(ActionId::allJobs))),
      m_backup(quietButton({}, tipOf(ActionId::backups))) {
    m_find->setProperty(kBoxed, true);
    m_find->setAccessibleName(tr("Find"));
    m_find->setPlaceholderText(tr("Find a book, a step, a lot, a leaf …"));
    m_find->setToolTip(tr("Type anywhere on this page to find; Enter opens the one slip that is "
                          "left, or looks everywhere"));
    m_find->setMinimumWidth(240);
    m_find->setMaximumWidth(400);
    m_find->installEventFilter(this);
    m_newJob->setToolTip(tipOf(ActionId::newJob));
    layOut();
    setBackup({});

    connect(m_newJob, &QPushButton::clicked, this, [this] { Q_EMIT goAsked({ViewId::newJob}); });
    connect(m_all, &QPushButton::clicked, this, &WorklistHead::tableTurned);
    connect(m_backup, &QPushButton::clicked, this, [this] { Q_EMIT goAsked({ViewId::backups}); });
    connect(m_person, &QPushButton::clicked, this, [this] {
        popUpPeople(m_session, *m_person, [this] { Q_EMIT goAsked(toAddPerson(m_session)); });
    });
    const auto showPerson = [this] { m_person->setText(personWords(m_session)); };
    connect(&session, &Session::personChanged, this, showPerson);
    connect(&session, &Session::changed, this, showPerson);
    showPerson();
}

void WorklistHead::layOut() {
    auto* above = new QHBoxLayout;
    above->setSpacing(kGap);
    above->addWidget(m_title);
    above->addStretch(1);
    above->addWidget(m_find, 2);
    above->addWidget(m_newJob);
    auto* below = new QHBoxLayout;
    below->setSpacing(kGrid);
    m_summary->setMinimumWidth(0); // a long date gives way before the window grows
    m_summary->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    below->addWidget(m_summary, 1);
    below->addWidget(m_person);
    addWayOn(*below, ActionId::dayOfWork, ViewId::day);
    addWayOn(*below, ActionId::materials, ViewId::materials);
    addWayOn(*below, ActionId::workshop, ViewId::workshop);
    below->addWidget(m_all);
    auto* down = new QVBoxLayout(this);
    // A quiet button's words stand a gap from its edge: all begin at one line and end at one.
    above->setContentsMargins(kGap, 0, kGap, 0);
    below->setContentsMargins(kGap, 0, 0, 0);
    down->setContentsMargins(15 * kGrid - kGap, 7 * kGrid, 15 * kGrid - kGap, kGap);
    down->setSpacing(kGrid);
    down->addLayout(above);
    down->addLayout(below);
    down->addWidget(m_backup, 0, Qt::AlignLeft);
}

void WorklistHead::setBackup(const QString& words) {
    m_backup->setText(words.isEmpty() ? QString{} : tr("%1 …").arg(words));
    m_backup->setAccessibleName(words.isEmpty() ? wordsOf(ActionId::backups) : words);
    m_backup->setVisible(!words.isEmpty());
}

void WorklistHead::addWayOn(QHBoxLayout& across, ActionId action, ViewId view) {
    auto* button = quietButton(wordsOf(action), tipOf(action));
    connect(button, &QPushButton::clicked, this, [this, view] { Q_EMIT goAsked({view}); });
    across.addWidget(button);
}

void WorklistHead::setInTheHouse(int jobs) {
    m_inTheHouse = jobs;
    showCounts();
}

void WorklistHead::setTable(std::optional<std::size_t> jobs) {
    m_jobs = jobs;
    m_title->setText(jobs ? wordsOf(ActionId::allJobs) : tr("Worklist"));
    m_all->setText(jobs ? tr("What needs you") : wordsOf(ActionId::allJobs));
    showCounts();
}

void WorklistHead::showCounts() {
    const QString here =
        m_jobs ? tr("%1, %2 in the house")
                     .arg(counted(static_cast<int>(*m_jobs), tr("%1 job"), tr("%1 jobs")))
                     .arg(m_inTheHouse)
               : counted(m_inTheHouse, tr("%1 job in the house"), tr("%1 jobs in the house"));
    m_summary->setText(dotted({here, fullDay(m_session.clock().today())}));
}

bool WorklistHead::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Down) {
        Q_EMIT downAsked();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace headcap::app
