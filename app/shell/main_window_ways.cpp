// How one gets from view to view, and back.
#include <QBoxLayout>
#include <QPushButton>
#include <QStackedWidget>

#include "app/look/grid.h"
#include "app/shell/main_window.h"
#include "app/shell/notice_bar.h"
#include "app/shell/person_menu.h"
#include "app/shell/view_table.h"

namespace headcap::app {

void MainWindow::askWho() {
    QWidget* anchor = current()->personAnchor();
    popUpPeople(m_session, anchor != nullptr ? *anchor : *current(),
                [this] { go(toAddPerson(m_session)); });
}

View* MainWindow::viewOf(ViewId id) {
    if (const auto made = m_made.find(id); made != m_made.end()) {
        return made->second;
    }
    for (const ViewEntry& entry : viewTable()) {
        if (entry.id == id) {
            View* view = entry.make(m_session);
            m_made[id] = view;
            m_views->addWidget(view);
            connect(view, &View::otherWorkshopAsked, this, &MainWindow::leaveWorkshop);
            connect(view, &View::goAsked, this,
                    [this](const Destination& destination) { go(destination); });
            return view;
        }
    }
    return nullptr;
}

View* MainWindow::current() const {
    return qobject_cast<View*>(m_views->currentWidget());
}

void MainWindow::turnTo(View* view) {
    m_views->setCurrentWidget(view);
    if (view != nullptr) {
        QBoxLayout* place = view->noticePlace();
        m_notices->setLeft(place != nullptr ? kPageMargin : 15 * kGrid);
        (place != nullptr ? place : static_cast<QBoxLayout*>(layout()))->addWidget(m_notices);
    }
}

bool MainWindow::open(const Destination& destination) {
    View* view = viewOf(destination.view);
    if (view == nullptr) {
        return false;
    }
    // Shown first, so that it can give the focus away.
    View* before = current();
    turnTo(view);
    if (!view->enter(destination)) {
        turnTo(before);
        return false;
    }
    setWindowTitle(view->title());
    showWayBack(destination.view);
    sayCamera();
    return true;
}

void MainWindow::showWayBack(ViewId view) {
    // The worklist is where every way begins; a job has it in its head.
    const bool isShown = view != ViewId::worklist && view != ViewId::job;
    if (isShown) {
        m_back->adjustSize(); // its face may take a while to load
        m_back->raise();
    }
    m_back->setVisible(isShown);
}

bool MainWindow::go(const Destination& destination) {
    if (!current()->leave() || !open(destination)) {
        return false;
    }
    m_notices->putAway();
    // The worklist is where every way begins; going where we are goes nowhere, and once a book is
    // taken in there is no way back to its taking in.
    const bool isTakenIn = m_way.back().view == ViewId::newJob && destination.view == ViewId::job;
    if (destination.view == ViewId::worklist) {
        m_way.clear();
    } else if (isTakenIn || m_way.back().view == destination.view) {
        m_way.pop_back();
    }
    m_way.push_back(destination);
    return true;
}

void MainWindow::back() {
    if (current()->back() || m_way.size() < 2 || !current()->leave()) {
        return;
    }
    const Destination here = m_way.back();
    m_way.pop_back();
    // Where one was before, on the page one was on.
    Destination there = m_way.back();
    there.record.reset();
    there.page.reset();
    if (!open(there)) {
        m_way.push_back(here);
    }
}

void MainWindow::leaveWorkshop(const QString& folder) {
    if (close()) {
        Q_EMIT otherWorkshopAsked(folder);
    }
}

} // namespace headcap::app
