// Makes a rename in a folder last through a loss of power.
#pragma once

#include <QString>

namespace headcap::app::print {

void syncFolder(const QString& path);

} // namespace headcap::app::print
