// What is measured with a window, each in a process of its own.
#pragma once

#include <cstdint>

#include <QApplication>
#include <QString>

namespace headcap::bench {

// The most memory this process has had, in MB.
[[nodiscard]] std::int64_t memoryMb();

// Shows a bare window with the word on it, or with nothing, and prints a line when it is painted.
int startBare(const QString& word);

// Shows the first useful window and prints a line when it is painted; then, after a while of work,
// the memory in MB.
int startOnce(QApplication& application, const QString& workshop);

// An hour's work by keys; prints the longest the window was busy at one action, what that was, and
// how many of all were busy for longer than 50 ms; which those were goes to the error stream.
int replayAnHour(QApplication& application, const QString& workshop);

} // namespace headcap::bench
