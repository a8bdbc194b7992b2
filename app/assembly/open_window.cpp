#include "app/assembly/open_window.h"

#include <cstdio>
#include <filesystem>
#include <memory>

#include "app/look/dress.h"
#include "app/session/dialog_prompts.h"
#include "app/session/sentences.h"
#include "app/session/session.h"
#include "app/session/settings.h"
#include "app/shell/main_window.h"

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

std::filesystem::path folderToOpen(const QStringList& arguments, const Settings& settings,
                                   const cli::Surroundings& surroundings) {
    const auto named = arguments.indexOf(QStringLiteral("--workshop"));
    if (named >= 0 && named + 1 < arguments.size()) {
        return arguments[named + 1].toStdString();
    }
    const QString last = settings.value(Setting::workshop).toString();
    return last.isEmpty() ? surroundings.defaultWorkshop
                          : std::filesystem::path{last.toStdString()};
}

// Only the usual workshop is made by itself: a folder that a person named must be one already.
std::unique_ptr<core::OpenWorkshop> openOrBegin(const std::filesystem::path& folder,
                                                cli::Surroundings& surroundings) {
    const bool isUsual = folder == surroundings.defaultWorkshop;
    if (isUsual && !std::filesystem::exists(folder / "workshop.sqlite")) {
        std::filesystem::create_directories(folder.parent_path());
        return surroundings.workshops.create(folder);
    }
    return surroundings.workshops.open(folder);
}

} // namespace

int openWindow(QApplication& application, const QStringList& arguments,
               cli::Surroundings& surroundings) {
    Settings settings;
    dress(application, lookOf(settings));
    const auto folder = folderToOpen(arguments, settings, surroundings);
    std::unique_ptr<core::OpenWorkshop> workshop;
    try {
        workshop = openOrBegin(folder, surroundings);
    } catch (const core::StoreError& error) {
        std::fprintf(stderr, "headcap: %s\n", sentence(error).toUtf8().constData());
        return static_cast<int>(cli::Exit::workshopUnusable);
    }
    settings.set(Setting::workshop, QString::fromStdString(
                                        std::filesystem::absolute(folder).lexically_normal()));

    DialogPrompts prompts;
    Session session{{.stores = workshop->stores(),
                     .clock = surroundings.clock,
                     .ids = surroundings.ids,
                     .prompts = prompts,
                     .settings = settings}};
    MainWindow window{session};
    prompts.setWindow(&window);
    QObject::connect(&window, &MainWindow::lookChanged, &window,
                     [&] { dress(application, lookOf(settings)); });
    window.QWidget::show();
    return QApplication::exec();
}

} // namespace headcap::app
