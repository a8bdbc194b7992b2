// The sheet a report is set on and the grid it is set to. Lengths are points (1/72 in), from the
// sheet's top left. The block is 174 mm wide on either sheet: two figures of 85 mm and the space
// between them; the text column is 126 mm, some 75 letters; the side column holds the headings.
#pragma once

#include <QSizeF>

namespace headcap::app::print {

inline constexpr double kPointsPerMm = 72.0 / 25.4;
[[nodiscard]] constexpr double mm(double length) {
    return length * kPointsPerMm;
}

enum class Sheet { a4, letter };

struct PageSetup {
    Sheet sheet = Sheet::a4;
    double width = 0;
    double height = 0;
    double left = 0;      // of the block
    double top = 0;       // of the text, under the running head
    double bottom = 0;    // of the text
    double headLine = 0;  // baseline of the running head
    double footLine = 0;  // baseline of the running foot
    double firstTop = 0;  // of the first page, which has no running head
    double draftEdge = 0; // left of the hatched strip that marks a draft

    [[nodiscard]] QSizeF size() const { return {width, height}; }
    [[nodiscard]] double textHeight() const { return bottom - top; }
};

[[nodiscard]] PageSetup pageSetup(Sheet sheet);

// The grid within the block.
inline constexpr double kLine = 14.0; // from baseline to baseline of the text
inline constexpr double kHalfLine = kLine / 2;
inline constexpr double kBlockWidth = mm(174);
inline constexpr double kTextLeft = mm(48);
inline constexpr double kTextWidth = kBlockWidth - kTextLeft;
inline constexpr double kSideWidth = mm(43);
inline constexpr double kFigureWidth = mm(85);
inline constexpr double kHair = 0.35;         // width of a hair rule
inline constexpr double kSignHeight = mm(13); // room for a hand above a ruled line

} // namespace headcap::app::print
