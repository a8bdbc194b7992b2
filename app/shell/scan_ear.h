// Tells a scanner that types from a hand: its keys come faster.
#pragma once

#include <functional>
#include <optional>

#include <QElapsedTimer>

class QKeyEvent;

namespace headcap::app {

class ScanEar {
public:
    ScanEar();
    // Milliseconds that go by; by default those of the machine.
    void setStopwatch(std::function<qint64()> elapsed) { m_elapsed = std::move(elapsed); }
    // A key, about to write at the cursor.
    void hear(const QKeyEvent& key, int cursor);
    // Where the word began that a scanner has just typed up to the cursor; nothing where a hand
    // typed it.
    [[nodiscard]] std::optional<int> scannedFrom(int cursor) const;

private:
    QElapsedTimer m_machine;
    std::function<qint64()> m_elapsed;
    qint64 m_lastKey = 0;
    int m_burst = 0; // where the keys began that came as fast as a scanner's
};

} // namespace headcap::app
