#include "tests/bench/workshop/window_run.h"

#include <chrono>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <functional>
#include <future>
#include <map>
#include <string>
#include <vector>

#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTest>

#include "app/look/dress.h"
#include "app/look/fonts.h"
#include "app/session/actions.h"
#include "app/session/dialog_prompts.h"
#include "app/shell/bench_line.h"
#include "app/shell/job_view.h"
#include "app/shell/main_window.h"
#include "db/workshop.h"

namespace headcap::bench {
namespace {

using Clock = std::chrono::steady_clock;

double since(Clock::time_point begun) {
    return std::chrono::duration<double, std::milli>(Clock::now() - begun).count();
}

// The program's window on a workshop, as the program assembles it.
struct Opened {
    explicit Opened(const QString& workshop)
        : open(workshops.open(workshop.toStdString())), session({.stores = open->stores(),
                                                                 .clock = clock,
                                                                 .ids = ids,
                                                                 .prompts = prompts,
                                                                 .settings = settings}),
          window(session) {
        window.resize(1440, 900);
        window.QWidget::show();
    }

    const core::SystemClock clock{};
    core::IdSource ids{clock};
    db::SqliteWorkshops workshops{clock, {.makesBackups = false}};
    std::unique_ptr<core::OpenWorkshop> open;
    app::DialogPrompts prompts;
    QTemporaryDir folder;
    app::Settings settings{folder.filePath(QStringLiteral("settings.ini"))};
    app::Session session;
    app::MainWindow window;
};

struct Longest {
    double milliseconds = 0;
    std::string action;
    int count = 0;
    std::map<std::string, std::vector<double>> overFifty; // by action
};

class Replay {
public:
    explicit Replay(Opened& opened) : m_opened(opened) {}

    Longest run() {
        const auto jobs = m_opened.open->stores().jobs.inTheHouse();
        for (std::size_t i = 0; i < 20; ++i) {
            workOn(jobs[i % jobs.size()].id);
            find(i % 2 == 0 ? QStringLiteral("guarded fold") : QStringLiteral("orchards"));
            act("worklist", [&] { key(app::ActionId::worklist); });
            if (i % 5 == 0) {
                lookRound();
            }
        }
        return m_longest;
    }

private:
    void act(const std::string& what, const std::function<void()>& work) {
        const auto begun = Clock::now();
        work();
        QCoreApplication::processEvents();
        const double took = since(begun);
        ++m_longest.count;
        if (took > 50) {
            m_longest.overFifty[what].push_back(took);
        }
        if (took > m_longest.milliseconds) {
            m_longest.milliseconds = took;
            m_longest.action = what;
        }
    }
    void key(app::ActionId id) {
        QWidget* at = QApplication::focusWidget();
        QTest::keySequence(at != nullptr ? at : &m_opened.window, app::keysOf(id).front());
    }
    void type(const QString& words) {
        for (const QChar c : words) {
            act("typing", [&] { QTest::keyClick(QApplication::focusWidget(), c.toLatin1()); });
        }
    }

    void workOn(const core::Id<core::Job>& job) {
        act("opening a job", [&] { m_opened.window.go({.view = app::ViewId::job, .job = job}); });
        for (const auto page :
             {app::ActionId::toCollation, app::ActionId::toSurvey, app::ActionId::toProposal,
              app::ActionId::toMaterials, app::ActionId::toPhotographs, app::ActionId::toReport,
              app::ActionId::toBench}) {
            act(app::wordsOf(page).toStdString(), [&] { key(page); });
        }
        act("to the bench line", [&] { key(app::ActionId::toBenchLine); });
        type(QStringLiteral("guarded K7 12 min"));
        act("logging a step", [] { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return); });
        act("undo", [&] { key(app::ActionId::undo); });
        act("redo", [&] { key(app::ActionId::redo); });
    }
    // The other views of the workshop, and a book begun to be taken in.
    void lookRound() {
        for (const auto view :
             {app::ActionId::allJobs, app::ActionId::allJobs, app::ActionId::materials,
              app::ActionId::mixing, app::ActionId::cutting, app::ActionId::stockList,
              app::ActionId::techniques, app::ActionId::dayOfWork, app::ActionId::workshop,
              app::ActionId::backups, app::ActionId::newJob}) {
            act(app::wordsOf(view).toStdString(), [&] { key(view); });
        }
        for (int field = 0; field < 12; ++field) {
            type(QStringLiteral("kell"));
            act("to the next field",
                [] { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab); });
        }
        act("worklist", [&] { key(app::ActionId::worklist); });
    }
    void find(const QString& words) {
        act("find", [&] { key(app::ActionId::find); });
        type(words);
    }

    Opened& m_opened;
    Longest m_longest{};
};

} // namespace

std::int64_t memoryMb() {
    std::ifstream in("/proc/self/status");
    std::string line;
    while (std::getline(in, line)) {
        if (line.starts_with("VmHWM:")) {
            return std::stoll(line.substr(6)) / 1024;
        }
    }
    return 0;
}

namespace {

class FirstPaint : public QObject {
public:
    explicit FirstPaint(QWidget& window) { window.installEventFilter(this); }
    [[nodiscard]] bool isSeen() const { return m_isSeen; }
    bool eventFilter(QObject*, QEvent* event) override {
        m_isSeen = m_isSeen || event->type() == QEvent::Paint;
        return false;
    }

private:
    bool m_isSeen = false;
};

// The events are processed until the paint has gone through the whole window.
void sayPainted(QWidget& window) {
    const FirstPaint paint(window);
    while (!paint.isSeen()) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    std::printf("painted\n");
    std::fflush(stdout);
}

} // namespace

int startBare(const QString& word) {
    QWidget window;
    QLabel label(&window);
    if (word.isEmpty()) {
        label.hide();
    }
    label.setText(word);
    window.resize(1440, 900);
    window.show();
    sayPainted(window);
    return 0;
}

int startOnce(QApplication& application, const QString& workshop) {
    const std::future<void> fonts = app::readFontsAhead();
    app::dress(application, {});
    Opened opened(workshop);
    sayPainted(opened.window);
    // A while of work, for its memory.
    for (const core::JobLine& line : opened.open->stores().jobs.page(0, 40)) {
        opened.window.go({.view = app::ViewId::job, .job = line.id});
        QCoreApplication::processEvents();
    }
    opened.window.go({.view = app::ViewId::find, .words = QStringLiteral("guarded")});
    QTest::qWait(200);
    std::printf("%lld\n", static_cast<long long>(memoryMb()));
    return 0;
}

int replayAnHour(QApplication& application, const QString& workshop) {
    app::dress(application, {});
    Opened opened(workshop);
    (void)QTest::qWaitForWindowExposed(&opened.window);
    const Longest longest = Replay(opened).run();
    std::size_t over = 0;
    for (auto& [action, times] : longest.overFifty) {
        over += times.size();
        std::string said;
        for (const double time : times) {
            said += " " + std::to_string(std::lround(time));
        }
        std::fprintf(stderr, "over 50 ms: %s:%s\n", action.c_str(), said.c_str());
    }
    std::printf("%.1f|%s|%zu|%d\n", longest.milliseconds, longest.action.c_str(), over,
                longest.count);
    return 0;
}

} // namespace headcap::bench
