// What is measured with a window, each in a process of its own.
#pragma once

#include <chrono>
#include <cstdint>

#include <QApplication>
#include <QString>

namespace headcap::bench {

// The most memory this process has had, in MB.
[[nodiscard]] std::int64_t memoryMb();

// From the start of the process to the first useful window, and the memory after a while of work;
// without a workshop, a bare window. Prints milliseconds and MB.
int startOnce(QApplication& application, const QString& workshop,
              std::chrono::steady_clock::time_point begun);

// An hour's work by keys; prints the longest the window was busy at one action, what that was, and
// how many were busy for longer than 50 ms.
int replayAnHour(QApplication& application, const QString& workshop);

} // namespace headcap::bench
