#include "core/materials/leaf_weight.h"

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

// A leaf of 250 × 175 mm at 120 g/m² weighs 5.25 g: 0.04375 m² × 120 (computed).
TEST(LeafWeight, isReadAsOneWeighsIt) {
    EXPECT_EQ(parseLeafWeight("5.25 g of 250 x 175 mm"), 120'000);
    EXPECT_EQ(parseLeafWeight("5.25 g of 250 × 175"), 120'000);
    EXPECT_EQ(parseLeafWeight(" 120 g/m² "), 120'000);
    EXPECT_EQ(parseLeafWeight("120"), 120'000);
    EXPECT_EQ(parseLeafWeight("3,5 gsm"), 3'500);
}

// A sheet of A4 (ISO 216: 210 × 297 mm) of 80 g/m² weighs 4.99 g.
TEST(LeafWeight, agreesWithASheetOfA4) {
    EXPECT_NEAR(static_cast<double>(weightOfLeaf(Mass::milligrams(4'990), Length::millimetres(210),
                                                 Length::millimetres(297))),
                80'000, 20);
}

TEST(LeafWeight, refusesWhatIsNoLeaf) {
    for (const char* text : {"", "0", "-80", "heavy", "5 ml of 250 x 175", "5 g of 250", "5 g of x",
                             "3001 g/m²", "5 g of 0 x 175"}) {
        EXPECT_FALSE(parseLeafWeight(text)) << text;
    }
}

TEST(LeafWeight, comesBackAsItIsShown) {
    for (const std::int64_t weight : {2'000, 3'500, 78'125, 120'000, 2'999'999}) {
        EXPECT_EQ(parseLeafWeight(leafWeightText(weight)), weight);
    }
}

} // namespace
} // namespace headcap::core
