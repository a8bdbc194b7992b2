#include "app/shell/main_window.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QPushButton>
#include <QScreen>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/palette.h"
#include "app/look/quiet_button.h"
#include "app/photo/camera_desk.h"
#include "app/session/actions.h"
#include "app/session/aside.h"
#include "app/session/keys_first.h"
#include "app/shell/notice_bar.h"
#include "app/shell/person_menu.h"
#include "app/shell/quiet_line.h"
#include "app/shell/view_table.h"
#include "app/work/setting_watch.h"
#include "core/materials/ledger_in_brief.h"

namespace headcap::app {
namespace {

constexpr int kLeastText = 100;
constexpr int kMostText = 200;
constexpr int kTextStep = 10;
constexpr int kReadAheadMs = 500;
constexpr int kNoticeAboveFoot = 96; // clear of the bench line
constexpr QSize kFrame{16, 64};      // what a desktop draws around a window, at most

} // namespace

MainWindow::MainWindow(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_views(new QStackedWidget(this)),
      m_notices(new NoticeBar(session, this)), m_settingLine(new QuietLine(this)),
      m_cameraLine(new QuietLine(this)), m_setting(new SettingWatch(session, this)),
      m_camera(new photo::CameraDesk(session, this)),
      m_back(quietButton(QStringLiteral("←"), tipOf(ActionId::back))), m_way{Destination{
                                                                           ViewId::worklist}} {
    new KeysFirst(this);
    layOut();
    setMinimumSize(1024, 640);
    resize(QSize{1440, 900}.boundedTo(screen()->availableSize() - kFrame));
    restoreGeometry(session.settings().value(Setting::windowPlace).toByteArray());
    addKeys();
    connect(&session, &Session::changed, this, [this] {
        if (View* view = current()) {
            view->refresh();
        }
    });
    open(m_way.back());
    connect(qApp, &QApplication::focusChanged, this, &MainWindow::keepFocus);
    watchSettings();
    watchCamera();
    readAhead();
}

// The shelf, which half the views ask for first: its sums are read while the worklist is looked at,
// once it is there.
void MainWindow::readAhead() {
    auto* aside = new Aside(m_session, this);
    QTimer::singleShot(kReadAheadMs, aside, [this, aside] {
        aside->ask([&records = m_session.records()] { return core::shelfInBrief(records); },
                   [aside](const auto&) { aside->deleteLater(); });
    });
}

// Its fields lose the focus as they go, when there is no page any more to give it to.
MainWindow::~MainWindow() {
    disconnect(qApp, nullptr, this, nullptr);
}

void MainWindow::layOut() {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addWidget(m_settingLine);
    down->addWidget(m_cameraLine);
    down->addWidget(m_views, 1);
    m_notices->place(kNoticeAboveFoot);
    m_back->setParent(m_views); // below the lines
    m_back->setAccessibleName(tr("Back"));
    m_back->setFocusPolicy(Qt::NoFocus); // Esc is its key
    m_back->move(kGap, 7 * kGrid);
    m_back->hide();
    connect(m_back, &QPushButton::clicked, this, &MainWindow::back);
}

void MainWindow::addKeys() {
    const auto on = [this](ActionId id, auto work) {
        connect(app::addAction(this, id), &QAction::triggered, this, work);
    };
    on(ActionId::newJob, [this] { go({ViewId::newJob}); });
    on(ActionId::find, [this] { go({ViewId::find}); });
    on(ActionId::keys, [this] { go({ViewId::keys}); });
    on(ActionId::worklist, [this] { go({ViewId::worklist}); });
    on(ActionId::materials, [this] { go({ViewId::materials}); });
    on(ActionId::mixing, [this] { go({ViewId::mixing}); });
    on(ActionId::cutting, [this] { go({ViewId::cutting}); });
    on(ActionId::stockList, [this] { go({ViewId::stock}); });
    on(ActionId::techniques, [this] { go({ViewId::techniques}); });
    on(ActionId::dayOfWork, [this] { go({ViewId::day}); });
    on(ActionId::workshop, [this] { go({ViewId::workshop}); });
    on(ActionId::back, [this] { back(); });
    on(ActionId::undo, [this] {
        if (current()->leave()) {
            m_session.undo();
        }
    });
    on(ActionId::redo, [this] { m_session.redo(); });
    on(ActionId::print, [this] {
        if (!current()->print()) {
            m_session.say({Notice::Kind::done, tr("Nothing here is for print; the report is.")});
        }
    });
    on(ActionId::backups, [this] { go({ViewId::backups}); });
    on(ActionId::otherWorkshop, [this] { leaveWorkshop({}); });
    on(ActionId::quit, [this] { close(); });
    on(ActionId::choosePerson, [this] { askWho(); });
    connect(&m_session, &Session::personAsked, this, &MainWindow::askWho);
    on(ActionId::largerText, [this] { changeText(kTextStep); });
    on(ActionId::smallerText, [this] { changeText(-kTextStep); });
    on(ActionId::turnTone, [this] { turnTone(); });
}

// What had the focus may be gone, with the record it stood for: the keys go to the page then.
void MainWindow::keepFocus(const QWidget*, const QWidget* now) {
    if (now != nullptr) {
        return;
    }
    QTimer::singleShot(0, this, [this] {
        const bool isElsewhere = QApplication::activePopupWidget() != nullptr ||
                                 QApplication::activeModalWidget() != nullptr ||
                                 QApplication::focusWidget() != nullptr;
        if (isActiveWindow() && !isElsewhere) {
            current()->setFocus(Qt::OtherFocusReason);
        }
    });
}

void MainWindow::askWho() {
    QWidget* at = focusWidget();
    popUpPeople(m_session, at != nullptr ? *at : *this, [this] { go(toAddPerson(m_session)); });
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

bool MainWindow::open(const Destination& destination) {
    View* view = viewOf(destination.view);
    if (view == nullptr) {
        return false;
    }
    // Shown first, so that it can give the focus away.
    View* before = current();
    m_views->setCurrentWidget(view);
    if (!view->enter(destination)) {
        m_views->setCurrentWidget(before);
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

void MainWindow::closeEvent(QCloseEvent* event) {
    // What can't be read is shown once; who closes again means it.
    if (!m_isClosingAnyway && !current()->leave()) {
        m_isClosingAnyway = true;
        event->ignore();
        return;
    }
    m_session.settings().set(Setting::windowPlace, saveGeometry());
    QWidget::closeEvent(event);
}

void MainWindow::leaveWorkshop(const QString& folder) {
    if (close()) {
        Q_EMIT otherWorkshopAsked(folder);
    }
}

void MainWindow::changeText(int byPercent) {
    const int percent = m_session.settings().value(Setting::textPercent).toInt();
    m_session.settings().set(Setting::textPercent,
                             std::clamp(percent + byPercent, kLeastText, kMostText));
    Q_EMIT lookChanged();
}

void MainWindow::turnTone() {
    const bool isDark = toneOf(palette()) == Tone::dark;
    m_session.settings().set(Setting::tone,
                             isDark ? QStringLiteral("light") : QStringLiteral("dark"));
    Q_EMIT lookChanged();
}

} // namespace headcap::app
