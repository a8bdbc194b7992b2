#include "app/shell/scan_ear.h"

#include <QKeyEvent>

namespace headcap::app {
namespace {

// Between two keys of a scanner that types; a hand is slower.
constexpr qint64 kScannerMs = 35;
constexpr int kLeastScanned = 4;

} // namespace

ScanEar::ScanEar() {
    m_machine.start();
    m_elapsed = [this] { return m_machine.elapsed(); };
}

void ScanEar::hear(const QKeyEvent& key, int cursor) {
    if (key.text().isEmpty() || !key.text().front().isPrint()) {
        return;
    }
    const qint64 now = m_elapsed();
    if (now - m_lastKey > kScannerMs) {
        m_burst = cursor;
    }
    m_lastKey = now;
}

std::optional<int> ScanEar::scannedFrom(int cursor) const {
    const bool isFast = m_elapsed() - m_lastKey <= kScannerMs;
    return isFast && cursor - m_burst >= kLeastScanned ? std::optional{m_burst} : std::nullopt;
}

} // namespace headcap::app
