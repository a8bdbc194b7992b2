// The faces and sizes of letters. The faces are Gentium Plus and Noto Sans; a sign that they lack
// comes from the next face that has it, and only that sign. A touch of letter spacing keeps
// ligature glyphs out, whose letters would vanish from the text of a PDF. Sizes are points.
#pragma once

#include <QFont>
#include <QString>

#include "app/print/layout/marks.h"
#include "core/report/document.h"

namespace headcap::app::print {

enum class Family { text, label };

struct Type {
    Family family = Family::text;
    double size = 10.5; // points, in steps of 0.05
    double leading = 14;
    Ink ink = Ink::text;
    bool italic = false;
    bool bold = false;
    double spacing = 0; // between letters, points
};

// At kGlyphScale.
[[nodiscard]] QFont fontOf(const Type& type, core::Run::Style style = core::Run::Style::plain);

// Each once: what no installed face can draw.
[[nodiscard]] QString signsWithoutFace(const QString& text, const Type& type);
void addOnce(QString& signs, const QString& more);

} // namespace headcap::app::print
