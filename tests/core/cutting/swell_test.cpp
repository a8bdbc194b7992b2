#include "core/cutting/swell.h"

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

Length um(std::int64_t n) {
    return Length::micrometres(n);
}

const SewingHouseValues kHouse;

TEST(SpineSwell, isThreadTimesSectionsPressedFlat) {
    const SpineSwell swell =
        spineSwell(20, um(500), SewingWay::allAlong, {}, Length::millimetres(30), kHouse);
    EXPECT_EQ(swell.thread, Length::millimetres(7)); // 20 × 0.5 × 0.7
    EXPECT_EQ(swell.perMille, 233);
}

TEST(SpineSwell, isHalvedBySewingTwoOn) {
    const auto swell = [](SewingWay way) {
        return spineSwell(24, um(500), way, {}, Length::millimetres(30), kHouse).total;
    };
    EXPECT_EQ(swell(SewingWay::twoOn) * 2, swell(SewingWay::allAlong));
    EXPECT_EQ(swell(SewingWay::threeOn) * 3, swell(SewingWay::allAlong));
}

TEST(SpineSwell, countsAGuardRoundAFoldTwiceAndAMendOnce) {
    const FoldRepairs repairs{10, um(40), 5, um(20)};
    const SpineSwell swell =
        spineSwell(20, um(500), SewingWay::allAlong, repairs, Length::millimetres(30), kHouse);
    EXPECT_EQ(swell.repairs, um(900));
    EXPECT_EQ(swell.total, swell.thread + swell.repairs);
}

// The thread that is proposed gives, within rounding, the swell that was wanted.
TEST(ThreadWanted, undoesTheSwell) {
    const FoldRepairs repairs{4, um(50), 2, um(30)};
    const Length bulk = Length::millimetres(32);
    for (const int sections : {6, 17, 40}) {
        for (const SewingWay way : {SewingWay::allAlong, SewingWay::twoOn, SewingWay::threeOn}) {
            const auto thread = threadWanted(sections, way, repairs, bulk, kHouse);
            ASSERT_TRUE(thread);
            const SpineSwell swell = spineSwell(sections, *thread, way, repairs, bulk, kHouse);
            EXPECT_NEAR(swell.perMille, kHouse.wantedPerMille, 1);
        }
    }
}

TEST(ThreadWanted, isNoneWhereRepairsAloneSwellEnough) {
    const FoldRepairs repairs{100, um(100), 0, {}};
    EXPECT_FALSE(threadWanted(20, SewingWay::allAlong, repairs, Length::millimetres(30), kHouse));
    EXPECT_FALSE(threadWanted(0, SewingWay::allAlong, {}, Length::millimetres(30), kHouse));
}

// Number 16 is 4,800 yards to the pound; 16-4 is four cords of it (Roberts & Etherington).
TEST(LinenThread, weighsWhatItsNumberSays) {
    const double metresToThePound = 4'800 * 0.9144;
    EXPECT_NEAR(static_cast<double>(massOfMetre({16, 1}).count()) * metresToThePound, 453'592'370.0,
                5'000);
    EXPECT_NEAR(static_cast<double>(massOfMetre({16, 4}).count()),
                4.0 * static_cast<double>(massOfMetre({16, 1}).count()), 4);
}

TEST(LinenThread, isThinnerByItsNumberAndThickerByItsPlies) {
    EXPECT_LT(thicknessOf({25, 3}, kHouse), thicknessOf({18, 3}, kHouse));
    EXPECT_GT(thicknessOf({18, 4}, kHouse), thicknessOf({18, 3}, kHouse));
    EXPECT_GT(thicknessOf({18, 3}, kHouse), um(400));
    EXPECT_LT(thicknessOf({18, 3}, kHouse), um(800));
}

TEST(NearestThread, isChosenFromTheShelf) {
    EXPECT_EQ(nearestThread({um(350), um(500), um(650)}, um(540)), std::optional<std::size_t>(1));
    EXPECT_FALSE(nearestThread({}, um(540)));
}

} // namespace
} // namespace headcap::core
