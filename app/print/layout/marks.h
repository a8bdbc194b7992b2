// A page as a value: what is drawn on it and where, before anything is drawn. Lengths are points.
// Every colour is solid: PDF/A-1 knows no transparency.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include <QGlyphRun>
#include <QList>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include "core/values/digest.h"

namespace headcap::app::print {

enum class Ink { text, quiet, rule, faint, accent, warning };

// Glyphs are shaped this many times larger than they are drawn, so that sizes of half a point and
// positions of a thousandth are whole numbers to Qt.
inline constexpr double kGlyphScale = 20.0;

struct TextLine {
    QPointF at; // left end of the baseline
    double width = 0;
    double ascent = 0; // of the face, above the baseline
    double descent = 0;
    QString text;
    QList<QGlyphRun> glyphs; // at kGlyphScale, from `at`
    Ink ink = Ink::text;
    bool upward = false; // turned to read from foot to head

    [[nodiscard]] QRectF box() const { return {at.x(), at.y() - ascent, width, ascent + descent}; }
};

struct Rule {
    QPointF from;
    QPointF to;
    double width = 0;
    Ink ink = Ink::rule;
};

// Slanting strokes that end at the sides of the area.
struct Hatch {
    QRectF area;
    double distance = 0;
    double width = 0;
    Ink ink = Ink::rule;
};

struct Frame {
    QRectF area;
    double width = 0;
    Ink ink = Ink::rule;
};

struct Picture {
    QRectF area;
    core::Digest photograph;
    int figure = 0;
};

using Mark = std::variant<TextLine, Rule, Hatch, Frame, Picture>;

[[nodiscard]] Mark moved(Mark mark, QPointF by);

// A place that the bookmarks lead to.
struct Entry {
    QString title;
    int level = 1;
    std::size_t page = 0; // from 0
    double top = 0;
};

struct Page {
    std::vector<Mark> marks;
};

struct Pages {
    QSizeF size;
    std::vector<Page> pages;
    std::vector<Entry> entries;
    QString signsWithoutFace; // each once; no installed face has them
};

} // namespace headcap::app::print
