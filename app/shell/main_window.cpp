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
#include "app/report/paper_desk.h"
#include "app/session/actions.h"
#include "app/session/aside.h"
#include "app/session/intake.h"
#include "app/session/keys_first.h"
#include "app/shell/notice_bar.h"
#include "app/shell/quiet_line.h"
#include "app/work/setting_watch.h"
#include "core/materials/ledger_in_brief.h"

namespace headcap::app {
namespace {

constexpr int kLeastText = 100;
constexpr int kMostText = 200;
constexpr int kTextStep = 10;
constexpr std::chrono::minutes kMeantFor{1};
constexpr int kReadAheadMs = 500;
constexpr QSize kFrame{16, 64}; // what a desktop draws around a window, at most

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
    down->addWidget(m_notices);
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

// What is being taken in, and what can't be read, is said once; who closes again means it. What
// can be kept is kept all the same.
bool MainWindow::mayClose() {
    const bool isMeant = !m_isMeant.hasExpired();
    bool isBusy = false;
    for (Intake* intake : findChildren<Intake*>()) {
        if (intake->isBusy() && isMeant) {
            intake->finish();
        }
        isBusy = isBusy || intake->isBusy();
    }
    if (isBusy) {
        m_session.say(
            {Notice::Kind::refused,
             tr("Files are still being taken in: wait a moment, or close again to take in "
                "no more of them.")});
    }
    for (PaperDesk* desk : findChildren<PaperDesk*>()) {
        if (desk->isBusy() && isMeant) {
            desk->stop();
        } else if (desk->isBusy()) {
            isBusy = true;
            m_session.say({Notice::Kind::refused,
                           tr("A paper is still being drawn: wait a moment, or close again to "
                              "leave it undone.")});
        }
    }
    const bool isLeft = !isBusy && current()->leave();
    return isLeft || isMeant;
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!mayClose()) {
        m_isMeant.setRemainingTime(kMeantFor);
        event->ignore();
        return;
    }
    m_session.settings().set(Setting::windowPlace, saveGeometry());
    QWidget::closeEvent(event);
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
