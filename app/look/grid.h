// The grid everything stands on: steps of 4 px, sizes of controls, the length of a line of text.
#pragma once

#include <algorithm>

#include <QFontMetrics>

namespace headcap::app {

inline constexpr int kGrid = 4;
inline constexpr int kGap = 2 * kGrid;        // between things that belong together
inline constexpr int kSpace = 4 * kGrid;      // between things that do not
inline constexpr int kSection = 8 * kGrid;    // above a section
inline constexpr int kPageMargin = 6 * kGrid; // left and right of a page
inline constexpr int kControl = 36;           // least height of a control
inline constexpr int kBenchControl = 48;
inline constexpr int kLineChars = 75; // the longest line of running text

[[nodiscard]] inline int controlHeight(const QFontMetrics& metrics) {
    return std::max(kControl, metrics.height() + 4 * kGrid);
}

[[nodiscard]] inline int lineWidth(const QFontMetrics& metrics) {
    return kLineChars * metrics.averageCharWidth();
}

} // namespace headcap::app
