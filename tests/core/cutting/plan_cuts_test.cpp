#include "core/cutting/plan_cuts.h"

#include <gtest/gtest.h>

#include "core/cutting/plan_check.h"

namespace headcap::core {
namespace {

Length mm(std::int64_t n) {
    return Length::millimetres(n);
}

CutPlan plan(const CutProblem& problem) {
    SearchLimits limits;
    limits.work = 200'000'000;
    const auto found = planCuts(problem, limits);
    EXPECT_TRUE(found);
    if (!found) {
        return {};
    }
    EXPECT_TRUE(checkPlan(problem, *found).empty());
    return *found;
}

CutProblem oneSheet(Length width, Length height, GrainWay grain, CutObjective objective) {
    CutProblem problem;
    problem.objective = objective;
    problem.sheets.push_back({"sheet", width, height, grain, 1});
    return problem;
}

// Published, or computed where said so: how many pieces a sheet gives, by its grain.
struct GrainCount {
    Length sheetAcross, sheetTall, pieceAlong, pieceAcross;
    GrainWay sheetGrain;
    std::size_t expected;
};

class GrainCounts : public testing::TestWithParam<GrainCount> {};

TEST_P(GrainCounts, areThoseOfTheTable) {
    const GrainCount& row = GetParam();
    CutProblem problem =
        oneSheet(row.sheetAcross, row.sheetTall, row.sheetGrain, CutObjective::mostValue);
    problem.pieces.push_back(
        {"piece", row.pieceAcross, row.pieceAlong, GrainWay::alongHeight, 100});
    EXPECT_EQ(plan(problem).placed.size(), row.expected);
}

const Length kQuarterInch = Length::nanometres(6'350'000);
INSTANTIATE_TEST_SUITE_P(
    Table, GrainCounts,
    testing::Values(
        // 8.5 × 11 in, pieces 5.5 in along the grain × 4.25: published 4 with the grain long
        GrainCount{kQuarterInch * 34, kQuarterInch * 44, kQuarterInch * 22, kQuarterInch * 17,
                   GrainWay::alongHeight, 4},
        GrainCount{kQuarterInch * 34, kQuarterInch * 44, kQuarterInch * 22, kQuarterInch * 17,
                   GrainWay::alongWidth, 2},
        // 640 × 900 mm, pieces 260 along the grain × 360: computed
        GrainCount{mm(640), mm(900), mm(260), mm(360), GrainWay::alongHeight, 3},
        GrainCount{mm(640), mm(900), mm(260), mm(360), GrainWay::alongWidth, 4}));

TEST(PlanCuts, turnsFreelyWhatHasNoGrain) {
    CutProblem problem = oneSheet(mm(300), mm(100), GrainWay::alongWidth, CutObjective::allPieces);
    problem.pieces.push_back({"label", mm(100), mm(300)});
    EXPECT_TRUE(plan(problem).placed.at(0).isTurned);
    problem.pieces[0].grain = GrainWay::alongWidth;
    EXPECT_EQ(plan(problem).leftOut.at(0).reason, LeftOutReason::fitsNoSheet);
    problem.sheets[0].grain = GrainWay::none; // handmade
    EXPECT_EQ(plan(problem).placed.size(), 1U);
    problem.rules.mayTurn = false;
    EXPECT_EQ(plan(problem).placed.size(), 0U);
}

// Counted by hand: the large piece cut off and trimmed (2), the strip for the six trimmed to their
// height and cut off at its end (2), and parted (5).
TEST(PlanCuts, trimsWhatIsAsHighInOneCut) {
    CutProblem problem = oneSheet(mm(300), mm(200), GrainWay::alongHeight, CutObjective::allPieces);
    problem.rules.leastOffcut = mm(40);
    problem.pieces.push_back({"fold", mm(100), mm(196), GrainWay::alongHeight, 1});
    problem.pieces.push_back({"guard", mm(24), mm(186), GrainWay::alongHeight, 6});
    const CutPlan found = plan(problem);
    EXPECT_EQ(found.placed.size(), 7U);
    EXPECT_LE(found.cuts.size(), 9U);
}

TEST(PlanCuts, losesAKerfAtEachCut) {
    CutProblem problem = oneSheet(mm(100), mm(50), GrainWay::none, CutObjective::mostValue);
    problem.pieces.push_back({"strip", mm(20), mm(50), GrainWay::none, 9});
    EXPECT_EQ(plan(problem).placed.size(), 5U);
    problem.rules.kerf = mm(1);
    EXPECT_EQ(plan(problem).placed.size(), 4U);
    problem.sheets[0].width = mm(104);
    EXPECT_EQ(plan(problem).placed.size(), 5U);
}

TEST(PlanCuts, cutsNoStripNarrowerThanTheShearCan) {
    CutProblem problem = oneSheet(mm(103), mm(50), GrainWay::none, CutObjective::mostValue);
    problem.pieces.push_back({"half", mm(50), mm(50), GrainWay::none, 2});
    problem.rules.leastStrip = mm(10);
    EXPECT_EQ(plan(problem).placed.size(), 1U); // two would leave 3 mm
    problem.sheets[0].width = mm(110);
    EXPECT_EQ(plan(problem).placed.size(), 2U);
    problem.rules.leastStrip = mm(60);
    EXPECT_EQ(plan(problem).placed.size(), 0U);
}

TEST(PlanCuts, trimsDamagedEdgesFirst) {
    CutProblem problem = oneSheet(mm(220), mm(120), GrainWay::none, CutObjective::allPieces);
    problem.sheets[0].trim = {mm(10), mm(10), mm(5), mm(15)};
    problem.pieces.push_back({"leaf", mm(200), mm(100)});
    const CutPlan found = plan(problem);
    ASSERT_EQ(found.placed.size(), 1U);
    EXPECT_EQ(found.placed[0].at, (CutRect{mm(10), mm(5), mm(200), mm(100)}));
    EXPECT_EQ(found.cuts.size(), 4U);
    EXPECT_EQ(found.waste, areaOf(mm(220), mm(120)) - areaOf(mm(200), mm(100)));
}

TEST(PlanCuts, cutsPastedPiecesSmallerByTheStretchAndLeavesOverlap) {
    CutProblem problem = oneSheet(mm(700), mm(500), GrainWay::alongHeight, CutObjective::allPieces);
    problem.sheets[0].stretch = {20'000, 2'000}; // 2 % across, 0.2 % along
    problem.pieces.push_back({"pastedown", mm(204), mm(250), GrainWay::alongHeight});
    problem.pieces[0].isPasted = true;
    problem.pieces[0].overlap = mm(5);
    const CutRect at = plan(problem).placed.at(0).at;
    EXPECT_EQ(at.width, mm(210));                       // 204 / 1.02 + 10
    EXPECT_EQ(at.height, Length::micrometres(259'500)); // 250 / 1.002 + 10, to the tenth
}

CutProblem offcutsAndSheets() {
    CutProblem problem;
    problem.sheets.push_back({"whole", mm(1000), mm(700), GrainWay::alongHeight, 3});
    problem.sheets.push_back({"offcut", mm(320), mm(450), GrainWay::alongHeight, 1});
    problem.pieces.push_back({"endpaper", mm(300), mm(220), GrainWay::alongHeight, 2});
    return problem;
}

TEST(PlanCuts, spendsAnOffcutBeforeAWholeSheet) {
    const CutPlan found = plan(offcutsAndSheets());
    ASSERT_EQ(found.placed.size(), 2U);
    EXPECT_EQ(found.placed[0].on.sheet, 1U);
    EXPECT_EQ(found.placed[1].on.sheet, 1U);
    EXPECT_TRUE(found.isProvedBest);
}

TEST(PlanCuts, keepsBackWhatIsToBeKept) {
    CutProblem problem = offcutsAndSheets();
    problem.sheets[1].isKeptBack = true;
    EXPECT_EQ(plan(problem).placed.at(0).on.sheet, 0U);
    problem.sheets[0].grain = GrainWay::alongWidth;
    problem.rules.mayTurn = false; // now only the kept sheet will do
    EXPECT_EQ(plan(problem).placed.at(0).on.sheet, 1U);
}

TEST(PlanCuts, spendsCommonPaperBeforeRare) {
    CutProblem problem = offcutsAndSheets();
    problem.sheets[1].cost = 90'000'000;
    problem.sheets[0].cost = 20'000'000;
    EXPECT_EQ(plan(problem).placed.at(0).on.sheet, 0U);
}

TEST(PlanCuts, leavesOneLargeOffcut) {
    CutProblem problem =
        oneSheet(mm(1000), mm(700), GrainWay::alongHeight, CutObjective::allPieces);
    problem.pieces.push_back({"leaf", mm(175), mm(250), GrainWay::alongHeight, 4});
    problem.rules.leastOffcut = mm(30);
    const CutPlan found = plan(problem);
    std::int64_t area = 0;
    for (const PlannedOffcut& offcut : found.offcuts) {
        area = std::max(area, areaOf(offcut.at.width, offcut.at.height).count());
    }
    // Side by side they leave 1000 × 450 whole; two and two leave 650 × 700.
    EXPECT_GE(area, areaOf(mm(650), mm(700)).count());
}

TEST(PlanCuts, saysHowManyFindNoRoom) {
    CutProblem problem = oneSheet(mm(210), mm(100), GrainWay::none, CutObjective::allPieces);
    problem.pieces.push_back({"card", mm(100), mm(100), GrainWay::none, 5});
    const CutPlan found = plan(problem);
    EXPECT_EQ(found.placed.size(), 2U);
    ASSERT_EQ(found.leftOut.size(), 1U);
    EXPECT_EQ(found.leftOut[0].count, 3);
    EXPECT_EQ(found.leftOut[0].reason, LeftOutReason::noRoom);
    EXPECT_FALSE(found.isProvedBest);
}

TEST(PlanCuts, stopsWhenAsked) {
    CutProblem problem = oneSheet(mm(2000), mm(1500), GrainWay::none, CutObjective::mostValue);
    for (int i = 0; i < 40; ++i) {
        problem.pieces.push_back({std::to_string(i), mm(101 + 7 * i), mm(397 - 5 * i)});
    }
    SearchLimits limits;
    limits.isStopped = [] { return true; };
    const auto found = planCuts(problem, limits);
    ASSERT_TRUE(found);
    EXPECT_TRUE(checkPlan(problem, *found).empty());
    EXPECT_GT(found->placed.size(), 5U);
}

} // namespace
} // namespace headcap::core
