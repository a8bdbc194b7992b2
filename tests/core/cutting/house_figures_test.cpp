#include "core/cutting/house_figures.h"

#include <set>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

TEST(HouseFigures, haveEachItsKeyAndItsSource) {
    std::set<std::string_view> keys;
    for (const HouseFigure& figure : houseFigures()) {
        EXPECT_TRUE(keys.insert(figure.key).second) << figure.key;
        EXPECT_FALSE(figure.source.empty()) << figure.key;
        EXPECT_EQ(
            (figure.length != nullptr) + (figure.perMille != nullptr) + (figure.ppm != nullptr), 1)
            << figure.key;
    }
}

// Each stands for a member of its own: what is put is what is read, and no other changes.
TEST(HouseFigures, areReadAsTheyAreWritten) {
    for (const HouseFigure& figure : houseFigures()) {
        CuttingHouse house;
        const std::string shipped = textOf(figure, house);
        const std::string other = figure.length != nullptr ? "7.25 mm" : "33.3 %";
        ASSERT_NE(shipped, other);
        ASSERT_TRUE(put(figure, other, house)) << figure.key;
        EXPECT_EQ(textOf(figure, house), other) << figure.key;
        for (const HouseFigure& one : houseFigures()) {
            if (one.key != figure.key) {
                EXPECT_EQ(textOf(one, house), textOf(one, CuttingHouse{})) << one.key;
            }
        }
        ASSERT_TRUE(put(figure, shipped, house)) << shipped;
        EXPECT_EQ(textOf(figure, house), shipped);
    }
}

TEST(HouseFigures, refuseWhatNoBenchKnows) {
    CuttingHouse house;
    const HouseFigure& square = *houseFigureNamed("case.square");
    for (const char* text : {"", "wide", "-3 mm", "4 m"}) {
        EXPECT_FALSE(put(square, text, house)) << text;
    }
    EXPECT_FALSE(put(*houseFigureNamed("sewing.swell"), "-1 %", house));
    EXPECT_EQ(textOf(square, house), textOf(square, CuttingHouse{}));
    EXPECT_EQ(houseFigureNamed("no.such"), nullptr);
}

} // namespace
} // namespace headcap::core
