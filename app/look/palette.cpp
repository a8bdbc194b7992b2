#include "app/look/palette.h"

#include <algorithm>
#include <cmath>

namespace headcap::app {
namespace {

const Colours kLight{
    .paper = QColor{0xF7, 0xF4, 0xEC},
    .raised = QColor{0xFF, 0xFD, 0xF8},
    .picked = QColor{0xDF, 0xE5, 0xEA},
    .ink = QColor{0x25, 0x22, 0x1D},
    .quiet = QColor{0x67, 0x5F, 0x54},
    .accent = QColor{0x2D, 0x4B, 0x6B},
    .settled = QColor{0x3C, 0x6A, 0x58},
    .open = QColor{0x8A, 0x5A, 0x00},
    .must = QColor{0x8C, 0x2B, 0x2B},
    .rule = QColor{0xDB, 0xD3, 0xC4},
    .edge = QColor{0x8F, 0x85, 0x76},
    .hatch = QColor{0xE9, 0xE0, 0xCE},
};

const Colours kDark{
    .paper = QColor{0x1F, 0x1D, 0x1A},
    .raised = QColor{0x28, 0x25, 0x21},
    .picked = QColor{0x36, 0x3B, 0x41},
    .ink = QColor{0xED, 0xE6, 0xD8},
    .quiet = QColor{0xB3, 0xA9, 0x98},
    .accent = QColor{0x9D, 0xBB, 0xD8},
    .settled = QColor{0x8F, 0xC0, 0xAC},
    .open = QColor{0xE0, 0xB2, 0x5C},
    .must = QColor{0xE3, 0x9A, 0x94},
    .rule = QColor{0x3D, 0x38, 0x31},
    .edge = QColor{0x80, 0x78, 0x6A},
    .hatch = QColor{0x3A, 0x33, 0x27},
};

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

} // namespace

const Colours& coloursOf(Tone tone) {
    return tone == Tone::light ? kLight : kDark;
}

QColor colourOf(const Colours& colours, Ink ink) {
    switch (ink) {
    case Ink::ink:
        return colours.ink;
    case Ink::quiet:
        return colours.quiet;
    case Ink::accent:
        return colours.accent;
    case Ink::settled:
        return colours.settled;
    case Ink::open:
        return colours.open;
    case Ink::must:
        return colours.must;
    }
    return colours.ink;
}

Tone toneOf(const QPalette& palette) {
    return palette.color(QPalette::Window).lightness() < 128 ? Tone::dark : Tone::light;
}

QPalette paletteFor(Tone tone) {
    const Colours& c = coloursOf(tone);
    QPalette palette;
    const auto set = [&](QPalette::ColorRole role, const QColor& colour) {
        palette.setColor(role, colour);
    };
    set(QPalette::Window, c.paper);
    set(QPalette::WindowText, c.ink);
    set(QPalette::Base, c.raised);
    set(QPalette::AlternateBase, c.paper);
    set(QPalette::Text, c.ink);
    set(QPalette::Button, c.paper);
    set(QPalette::ButtonText, c.ink);
    set(QPalette::BrightText, c.must);
    set(QPalette::Highlight, c.picked);
    set(QPalette::HighlightedText, c.ink);
    set(QPalette::PlaceholderText, c.quiet);
    set(QPalette::Link, c.accent);
    set(QPalette::LinkVisited, c.accent);
    set(QPalette::ToolTipBase, c.raised);
    set(QPalette::ToolTipText, c.ink);
    set(QPalette::Light, c.raised);
    set(QPalette::Midlight, c.rule);
    set(QPalette::Mid, c.rule);
    set(QPalette::Dark, c.edge);
    set(QPalette::Shadow, c.edge);
    for (const auto role :
         {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::HighlightedText}) {
        palette.setColor(QPalette::Disabled, role, c.quiet);
    }
    return palette;
}

std::vector<InkOnGround> pairsOf(Tone tone) {
    const Colours& c = coloursOf(tone);
    constexpr double kText = 4.5;
    constexpr double kEdge = 3.0;
    std::vector<InkOnGround> pairs;
    struct Named {
        const char* name;
        QColor colour;
    };
    const Named inks[] = {{"ink", c.ink},         {"quiet", c.quiet}, {"accent", c.accent},
                          {"settled", c.settled}, {"open", c.open},   {"must", c.must}};
    for (const Named& ink : inks) {
        for (const QColor& ground : {c.paper, c.raised, c.picked}) {
            pairs.push_back({ink.name, ink.colour, ground, kText});
        }
    }
    pairs.push_back({"text on accent", c.paper, c.accent, kText});
    pairs.push_back({"edge on paper", c.edge, c.paper, kEdge});
    pairs.push_back({"edge on raised", c.edge, c.raised, kEdge});
    return pairs;
}

double contrast(const QColor& a, const QColor& b) {
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

} // namespace headcap::app
