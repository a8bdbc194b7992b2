#include "app/look/palette.h"

#include <gtest/gtest.h>

namespace headcap::app {
namespace {

// WCAG 2.1, definition of contrast ratio: black on white is 21 : 1, and #777777 on white is the
// well-known 4.48 that just fails AA.
TEST(Contrast, isTheRatioOfWcag) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrast(QColor{0x77, 0x77, 0x77}, Qt::white), 4.48, 0.005);
    EXPECT_NEAR(contrast(Qt::white, QColor{0x77, 0x77, 0x77}), 4.48, 0.005);
}

class Tones : public testing::TestWithParam<Tone> {};

TEST_P(Tones, everyInkCanBeReadOnEveryGround) {
    const auto pairs = pairsOf(GetParam());
    EXPECT_GE(pairs.size(), 20U);
    for (const InkOnGround& pair : pairs) {
        EXPECT_GE(contrast(pair.ink, pair.ground), pair.least)
            << pair.name << " on " << pair.ground.name().toStdString();
    }
}

TEST_P(Tones, areToldByTheirPalette) {
    EXPECT_EQ(toneOf(paletteFor(GetParam())), GetParam());
}

// No role may be left at the toolkit's own grey: each is a colour of the table.
TEST_P(Tones, haveNoColourOfTheToolkit) {
    const Colours& c = coloursOf(GetParam());
    const std::vector<QColor> known{c.paper,  c.raised, c.picked, c.ink, c.quiet,
                                    c.accent, c.must,   c.rule,   c.edge};
    const QPalette palette = paletteFor(GetParam());
    for (const auto group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled}) {
        for (int role = 0; role < QPalette::NColorRoles; ++role) {
            if (role == QPalette::NoRole) {
                continue;
            }
            const QColor colour = palette.color(group, static_cast<QPalette::ColorRole>(role));
            EXPECT_NE(std::find(known.begin(), known.end(), colour), known.end())
                << "role " << role << " is " << colour.name().toStdString();
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Both, Tones, testing::Values(Tone::light, Tone::dark));

} // namespace
} // namespace headcap::app
