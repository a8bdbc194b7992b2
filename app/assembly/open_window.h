// Opens the window on a workshop: the one named, the one opened last, the one where the user's
// data lie; where there is none, or another is wanted, it asks which.
#pragma once

#include <QApplication>
#include <QStringList>

#include "app/cli/command.h"

namespace headcap::app {

// The program's exit status, once the window is closed.
[[nodiscard]] int openWindow(QApplication& application, const QStringList& arguments,
                             cli::Surroundings& surroundings);

} // namespace headcap::app
