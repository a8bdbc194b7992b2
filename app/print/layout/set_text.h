// Text set in lines: runs of one paragraph, broken to a width, each line as glyphs with its text.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <QString>

#include "app/print/layout/faces.h"
#include "app/print/layout/marks.h"
#include "core/report/document.h"

namespace headcap::app::print {

enum class Align { left, right, centre };

// Lines from their own top left: the first baseline lies at `firstBaseline`, each further one a
// leading below.
struct SetText {
    std::vector<TextLine> lines;
    double leading = 0;
    QString signsWithoutFace;

    [[nodiscard]] double height() const { return leading * static_cast<double>(lines.size()); }
    [[nodiscard]] double widest() const;
};

[[nodiscard]] SetText setText(const std::vector<core::Run>& runs, const Type& type, double width,
                              Align align = Align::left);
[[nodiscard]] SetText setText(const QString& text, const Type& type, double width,
                              Align align = Align::left);
// One line, cut short with an ellipsis where it is too long.
[[nodiscard]] SetText setOneLine(const QString& text, const Type& type, double width,
                                 Align align = Align::left);

// The width of the longest word: a narrower column would break it.
[[nodiscard]] double longestWord(const std::vector<core::Run>& runs, const Type& type);

[[nodiscard]] QString fromUtf8(std::string_view text);

} // namespace headcap::app::print
