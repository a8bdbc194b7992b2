// The composition root: the one place that knows the window, the command line and what keeps a
// workshop, and puts them together.
#include <filesystem>

#include <QApplication>
#include <QLoggingCategory>
#include <QStandardPaths>

#include "app/assembly/open_window.h"
#include "app/cli/command.h"
#include "app/report/issuing.h"
#include "db/workshop.h"
#include "demo-data/build_demo.h"

namespace app = headcap::app;
namespace core = headcap::core;
namespace db = headcap::db;
namespace demo = headcap::demo;

namespace {

std::filesystem::path usualWorkshop() {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    return std::filesystem::path{folder.toStdString()} / "workshop";
}

// Without a display a Qt program would abort: commands need none.
void chooseOffscreenWhereThereIsNoDisplay() {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM") && qEnvironmentVariableIsEmpty("DISPLAY") &&
        qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
}

// The demo's finished jobs stand the audit: one that does not is a fault of its data.
void issueOrFail(const core::Stores& stores, const core::Clock& clock, core::IdSource& ids,
                 const core::Id<core::Job>& job, const core::Id<core::Person>& who) {
    const auto issued = app::issueReport(stores, clock, ids, job, {.who = who, .changes = {}});
    if (!issued) {
        throw core::StoreError{core::StoreError::Code::internal,
                               "a finished job of the demo can't be issued: " +
                                   issued.error().sentence.toStdString()};
    }
}

} // namespace

int main(int argc, char* argv[]) {
    chooseOffscreenWhereThereIsNoDisplay();
    // Standard error is for sentences; Qt's words for programmers come with QT_LOGGING_RULES.
    QLoggingCategory::setFilterRules(QStringLiteral("default.warning=false"));
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("headcap"));
    QApplication::setApplicationDisplayName(QStringLiteral("Headcap"));
    QApplication::setApplicationVersion(QStringLiteral(HEADCAP_VERSION));

    const core::SystemClock clock;
    core::IdSource ids{clock};
    db::SqliteWorkshops workshops{clock};
    app::cli::Surroundings surroundings{
        .workshops = workshops,
        .clock = clock,
        .ids = ids,
        .buildDemo =
            [&](const std::filesystem::path& folder) {
                return demo::buildDemo(
                    workshops, clock, folder,
                    {.issueReport = [&](const core::Stores& stores, const core::Clock& then,
                                        const core::Id<core::Job>& job,
                                        const core::Id<core::Person>& who) {
                        issueOrFail(stores, then, ids, job, who);
                    }});
            },
        .defaultWorkshop = usualWorkshop(),
    };
    const QStringList arguments = QApplication::arguments();
    return app::cli::isCommandLine(arguments)
               ? app::cli::runCommandLine(arguments, surroundings)
               : app::openWindow(application, arguments, surroundings);
}
