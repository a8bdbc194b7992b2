// A text file that a command was given, read whole.
#pragma once

#include <string>

#include <QString>

namespace headcap::app::cli {

// Throws Failure where it can't be read, or is not UTF-8. A byte order mark is left off.
[[nodiscard]] std::string textOf(const QString& path);

} // namespace headcap::app::cli
