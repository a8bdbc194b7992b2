// The day of the week, as people say when something near is due.
#pragma once

#include <QDate>
#include <QLocale>

#include "core/values/time.h"

namespace headcap::app {

// "Wednesday"
[[nodiscard]] inline QString weekday(core::Day day) {
    return QLocale{QLocale::English}.toString(QDate{static_cast<int>(day.year()),
                                                    static_cast<int>(unsigned{day.month()}),
                                                    static_cast<int>(unsigned{day.day()})},
                                              QStringLiteral("dddd"));
}

} // namespace headcap::app
