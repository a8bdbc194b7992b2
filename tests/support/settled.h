// Waiting for the window, instead of for the clock.
#pragma once

#include <algorithm>

#include <QAbstractEventDispatcher>
#include <QCoreApplication>
#include <QTest>

#include "app/session/aside.h"

namespace headcap::tests {

// What is put off until the event loop comes round is done: layouts, what is asked for "at once".
inline void settle() {
    constexpr int kMostRounds = 200;
    QAbstractEventDispatcher* events = QAbstractEventDispatcher::instance();
    for (int i = 0; i < kMostRounds && events->processEvents(QEventLoop::AllEvents); ++i) {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
}

// What is read aside for the widget is there, and shown. False: not within ten seconds.
[[nodiscard]] inline bool isRead(const QWidget& widget) {
    const bool isThere = QTest::qWaitFor(
        [&] {
            return std::ranges::none_of(widget.findChildren<app::Aside*>(), &app::Aside::isReading);
        },
        10'000);
    settle();
    return isThere;
}

// The shelf, which a window reads ahead by itself soon after it has come, is read.
[[nodiscard]] inline bool isReadAhead(const QWidget& window) {
    return QTest::qWaitFor(
        [&] {
            return window.findChildren<app::Aside*>(QString{}, Qt::FindDirectChildrenOnly)
                .isEmpty();
        },
        10'000);
}

} // namespace headcap::tests
