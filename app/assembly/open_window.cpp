#include "app/assembly/open_window.h"

#include <cstdio>
#include <filesystem>
#include <future>
#include <memory>

#include "app/look/dress.h"
#include "app/look/fonts.h"
#include "app/session/dialog_prompts.h"
#include "app/session/sentences.h"
#include "app/session/session.h"
#include "app/session/settings.h"
#include "app/shell/main_window.h"
#include "app/shell/start_window.h"

namespace headcap::app {
namespace {

Look lookOf(const Settings& settings) {
    const QString tone = settings.value(Setting::tone).toString();
    Look look;
    look.textShare = settings.value(Setting::textPercent).toInt() / 100.0;
    if (tone == QLatin1String("light")) {
        look.tone = Tone::light;
    } else if (tone == QLatin1String("dark")) {
        look.tone = Tone::dark;
    }
    return look;
}

std::optional<std::filesystem::path> folderNamed(const QStringList& arguments) {
    const auto named = arguments.indexOf(QStringLiteral("--workshop"));
    return named >= 0 && named + 1 < arguments.size()
               ? std::optional<std::filesystem::path>{arguments[named + 1].toStdString()}
               : std::nullopt;
}

std::filesystem::path lastOf(const Settings& settings) {
    return settings.value(Setting::workshop).toString().toStdString();
}

StartWindow::Means startMeans(const Settings& settings, Prompts& prompts,
                              const cli::Surroundings& surroundings) {
    const auto beside = surroundings.defaultWorkshop.parent_path();
    return {.prompts = prompts,
            .usual = surroundings.defaultWorkshop,
            .demo = beside / "demo-workshop",
            .demoCommand = {QApplication::applicationFilePath(), QStringLiteral("demo")},
            .last = lastOf(settings)};
}

// Nothing: the window was closed.
std::optional<StartWindow::Choice> ask(const StartWindow::Means& means, const QString& problem,
                                       DialogPrompts& prompts) {
    std::optional<StartWindow::Choice> choice;
    StartWindow start{means};
    prompts.setWindow(&start);
    start.setProblem(problem);
    QObject::connect(&start, &StartWindow::chosen, &start, [&](const StartWindow::Choice& made) {
        choice = made;
        start.close();
    });
    start.show();
    QApplication::exec();
    prompts.setWindow(nullptr);
    return choice;
}

// Null where it can't be had; the problem says why.
std::unique_ptr<core::OpenWorkshop> take(const StartWindow::Choice& choice, QString& problem,
                                         cli::Surroundings& surroundings) {
    try {
        if (choice.kind == StartWindow::Kind::open) {
            return surroundings.workshops.open(choice.folder);
        }
        std::filesystem::create_directories(choice.folder.parent_path());
        return surroundings.workshops.create(choice.folder);
    } catch (const core::StoreError& error) {
        problem = sentence(error);
    } catch (const std::filesystem::filesystem_error& error) {
        problem = StartWindow::tr("A workshop can't be made in %1: %2.")
                      .arg(QString::fromStdString(choice.folder.string()),
                           QString::fromStdString(error.code().message()));
    }
    return nullptr;
}

// The folder of another workshop that is wanted, empty where it is to be asked for; nothing: the
// window was closed.
std::optional<QString> work(QApplication& application, core::OpenWorkshop& workshop,
                            Settings& settings, DialogPrompts& prompts,
                            cli::Surroundings& surroundings) {
    Session session{{.stores = workshop.stores(),
                     .clock = surroundings.clock,
                     .ids = surroundings.ids,
                     .prompts = prompts,
                     .settings = settings}};
    MainWindow window{session};
    prompts.setWindow(&window);
    QObject::connect(&window, &MainWindow::lookChanged, &window,
                     [&] { dress(application, lookOf(settings)); });
    std::optional<QString> wanted;
    QObject::connect(&window, &MainWindow::otherWorkshopAsked, &window,
                     [&](const QString& folder) { wanted = folder; });
    window.QWidget::show();
    QApplication::exec();
    prompts.setWindow(nullptr);
    return wanted;
}

std::filesystem::path firstFolder(const QStringList& arguments, const Settings& settings,
                                  const cli::Surroundings& surroundings) {
    // One that was opened last and is gone is told of, and no other opened in its place.
    std::filesystem::path folder = folderNamed(arguments).value_or(lastOf(settings));
    if (folder.empty() && holdsWorkshop(surroundings.defaultWorkshop)) {
        folder = surroundings.defaultWorkshop;
    }
    return folder;
}

std::optional<StartWindow::Choice> choiceOf(const std::filesystem::path& folder) {
    return folder.empty() ? std::nullopt
                          : std::optional{StartWindow::Choice{StartWindow::Kind::open, folder}};
}

} // namespace

int openWindow(QApplication& application, const QStringList& arguments,
               cli::Surroundings& surroundings) {
    const std::future<void> fonts = readFontsAhead();
    Settings settings;
    dress(application, lookOf(settings));
    DialogPrompts prompts;
    bool isNamed = folderNamed(arguments).has_value();
    auto choice = choiceOf(firstFolder(arguments, settings, surroundings));
    QString problem;
    for (;;) {
        auto workshop = choice ? take(*choice, problem, surroundings) : nullptr;
        if (!workshop && isNamed) {
            std::fprintf(stderr,
                         "headcap: %s Without --workshop the program asks which to open, or "
                         "begins one.\n",
                         problem.toUtf8().constData());
            return static_cast<int>(cli::Exit::workshopUnusable);
        }
        isNamed = false;
        std::optional<QString> wanted;
        if (workshop) {
            settings.set(Setting::workshop,
                         QString::fromStdString(
                             std::filesystem::absolute(choice->folder).lexically_normal()));
            wanted = work(application, *workshop, settings, prompts, surroundings);
            if (!wanted) {
                return 0;
            }
            problem.clear();
        }
        workshop.reset();
        choice = wanted && !wanted->isEmpty()
                     ? choiceOf(wanted->toStdString())
                     : ask(startMeans(settings, prompts, surroundings), problem, prompts);
        if (!choice) {
            return 0;
        }
    }
}

} // namespace headcap::app
