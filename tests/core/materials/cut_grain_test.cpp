#include "core/materials/cut_grain.h"

#include <gtest/gtest.h>

#include "core/cutting/plan_cuts.h"

namespace headcap::core {
namespace {

Length mm(std::int64_t n) {
    return Length::millimetres(n);
}

CutProblem sheetOf(GrainWay grain, GrainWay ofPiece) {
    CutProblem problem;
    problem.sheets.push_back({"31-001", mm(400), mm(300), grain});
    // Fits one way only, but for what the grain says.
    problem.pieces.push_back({"lining", mm(380), mm(280), ofPiece});
    problem.pieces.push_back({"label", mm(10), mm(15), ofPiece});
    return problem;
}

CutPlan planned(const CutProblem& problem) {
    SearchLimits limits;
    limits.work = 5'000'000;
    return *planCuts(problem, limits);
}

// A piece's height runs along the spine; so does the grain, or else it lies across.
TEST(CutGrain, aPieceLiesAsItsSheetAndItsTurningSay) {
    const CutProblem along = sheetOf(GrainWay::alongHeight, GrainWay::none);
    const CutProblem across = sheetOf(GrainWay::alongWidth, GrainWay::none);
    const PlacedPiece straight{.piece = 0};
    const PlacedPiece turned{.piece = 0, .isTurned = true};
    EXPECT_EQ(grainAtSpine(along, straight), GrainAtSpine::along);
    EXPECT_EQ(grainAtSpine(along, turned), GrainAtSpine::across);
    EXPECT_EQ(grainAtSpine(across, straight), GrainAtSpine::across);
    EXPECT_EQ(grainAtSpine(across, turned), GrainAtSpine::along);
    EXPECT_EQ(grainAtSpine(sheetOf(GrainWay::none, GrainWay::none), turned), GrainAtSpine::noGrain);
}

TEST(CutGrain, whatIsWantedAlongTheSpineNeverLiesAcross) {
    for (const GrainWay grain : {GrainWay::alongHeight, GrainWay::alongWidth, GrainWay::none}) {
        const CutProblem problem = sheetOf(grain, GrainWay::alongHeight);
        EXPECT_TRUE(piecesAcrossSpine(problem, planned(problem)).empty());
    }
}

TEST(CutGrain, whatMayLieAnyWayIsNamedWhereItLiesAcross) {
    const CutProblem problem = sheetOf(GrainWay::alongWidth, GrainWay::none);
    const CutPlan plan = planned(problem);
    ASSERT_FALSE(plan.placed.empty());
    const auto across = piecesAcrossSpine(problem, plan);
    ASSERT_FALSE(across.empty());
    EXPECT_EQ(across.front(), 0U) << "the lining fits one way only";
}

} // namespace
} // namespace headcap::core
