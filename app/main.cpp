// The composition root: the one place that knows the window, the command line and what keeps a
// workshop, and puts them together.
#include <filesystem>

#include <QApplication>
#include <QStandardPaths>

#include "app/assembly/open_window.h"
#include "app/cli/command.h"
#include "db/workshop.h"
#include "demo-data/build_demo.h"

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

} // namespace

int main(int argc, char* argv[]) {
    using namespace headcap;
    chooseOffscreenWhereThereIsNoDisplay();
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
                return demo::buildDemo(workshops, clock, folder);
            },
        .defaultWorkshop = usualWorkshop(),
    };
    const QStringList arguments = QApplication::arguments();
    return app::cli::isCommandLine(arguments)
               ? app::cli::runCommandLine(arguments, surroundings)
               : app::openWindow(application, arguments, surroundings);
}
