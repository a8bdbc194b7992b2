// Days of the record as the toolkit's, and as people say them.
#pragma once

#include <QDate>
#include <QLocale>

#include "core/values/time.h"

namespace headcap::app {

[[nodiscard]] inline QDate dateOf(core::Day day) {
    return {static_cast<int>(day.year()), static_cast<int>(unsigned{day.month()}),
            static_cast<int>(unsigned{day.day()})};
}

// "Wednesday", as is said of what is near.
[[nodiscard]] inline QString weekday(core::Day day) {
    return QLocale{QLocale::English}.toString(dateOf(day), QStringLiteral("dddd"));
}

} // namespace headcap::app
