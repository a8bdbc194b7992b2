// The colours of the house, light and dark, by what they are for. Text meets WCAG 2.1 AA on every
// ground it may stand on, edges of controls 3 : 1; tests hold the tables to it.
#pragma once

#include <vector>

#include <QColor>
#include <QPalette>

namespace headcap::app {

enum class Tone { light, dark };

struct Colours {
    // Grounds.
    QColor paper;
    QColor raised; // fields, slips, the bench line
    QColor picked; // a chosen row, chosen text
    // Inks.
    QColor ink;
    QColor quiet;
    QColor accent;
    QColor settled;
    QColor open;
    QColor must; // must settle
    // Lines.
    QColor rule;  // hair rules: nothing depends on seeing them
    QColor edge;  // of controls
    QColor hatch; // of the hazard strip
};

enum class Ink { ink, quiet, accent, settled, open, must };

[[nodiscard]] const Colours& coloursOf(Tone tone);
[[nodiscard]] QColor colourOf(const Colours& colours, Ink ink);

// Dark is told by the lightness of the window's ground.
[[nodiscard]] Tone toneOf(const QPalette& palette);
[[nodiscard]] inline const Colours& coloursFor(const QPalette& palette) {
    return coloursOf(toneOf(palette));
}
[[nodiscard]] QPalette paletteFor(Tone tone);

// Every pair of ink and ground that the windows use.
struct InkOnGround {
    const char* name;
    QColor ink;
    QColor ground;
    double least; // the ratio of contrast it must reach
};
[[nodiscard]] std::vector<InkOnGround> pairsOf(Tone tone);

// WCAG 2.1, relative luminance and contrast ratio: 1 to 21.
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

} // namespace headcap::app
