// The check must find every way in which a plan can be wrong: a right plan is spoilt in each.
#include "core/cutting/plan_check.h"

#include <algorithm>
#include <functional>

#include <gtest/gtest.h>

#include "core/cutting/plan_cuts.h"

namespace headcap::core {
namespace {

Length mm(std::int64_t n) {
    return Length::millimetres(n);
}

// Two endpapers beside each other and a strip below them, with the rest kept.
CutProblem smallProblem() {
    CutProblem problem;
    problem.sheets.push_back({"sheet", mm(700), mm(500), GrainWay::alongHeight, 1});
    problem.pieces.push_back({"endpaper", mm(300), mm(220), GrainWay::alongHeight, 2});
    problem.pieces.push_back({"strip", mm(600), mm(30), GrainWay::alongWidth, 1});
    problem.rules.leastStrip = mm(10);
    problem.rules.leastOffcut = mm(20);
    return problem;
}

CutPlan handPlan() {
    const SheetPlace on{0, 1};
    CutPlan plan;
    plan.cuts = {
        {on, 1, CutAxis::y, mm(220), mm(0), mm(700)},
        {on, 2, CutAxis::x, mm(300), mm(0), mm(220)},
        {on, 3, CutAxis::x, mm(600), mm(0), mm(220)},
    };
    plan.placed = {
        {0, on, {mm(0), mm(0), mm(300), mm(220)}, false},
        {0, on, {mm(300), mm(0), mm(300), mm(220)}, false},
    };
    plan.leftOut = {{1, 1, LeftOutReason::fitsNoSheet}};
    plan.offcuts = {
        {on, {mm(0), mm(220), mm(700), mm(280)}, GrainWay::alongHeight},
        {on, {mm(600), mm(0), mm(100), mm(220)}, GrainWay::alongHeight},
    };
    plan.usedArea = areaOf(mm(600), mm(220));
    plan.value = plan.usedArea.count();
    plan.cost = areaOf(mm(700), mm(500)).count();
    return plan;
}

TEST(PlanCheck, passesAPlanMadeByHand) {
    EXPECT_EQ(checkPlan(smallProblem(), handPlan()), std::vector<PlanFinding>{});
}

struct Spoilt {
    PlanFault fault;
    std::function<void(CutProblem&, CutPlan&)> spoil;
};

class SpoiltPlan : public testing::TestWithParam<Spoilt> {};

TEST_P(SpoiltPlan, isFound) {
    CutProblem problem = smallProblem();
    CutPlan plan = handPlan();
    GetParam().spoil(problem, plan);
    const std::vector<PlanFinding> findings = checkPlan(problem, plan);
    EXPECT_TRUE(std::ranges::any_of(findings, [](const PlanFinding& f) {
        return f.fault == GetParam().fault;
    })) << findings.size();
}

INSTANTIATE_TEST_SUITE_P(
    Ways, SpoiltPlan,
    testing::Values(
        Spoilt{PlanFault::noSuchSheet, [](auto&, auto& p) { p.placed[0].on.number = 2; }},
        Spoilt{PlanFault::noSuchPiece, [](auto&, auto& p) { p.placed[0].piece = 7; }},
        Spoilt{PlanFault::orderOfCuts, [](auto&, auto& p) { p.cuts[2].order = 2; }},
        Spoilt{PlanFault::cutNotEdgeToEdge, [](auto&, auto& p) { p.cuts[1].to = mm(200); }},
        Spoilt{PlanFault::cutNotEdgeToEdge,
               [](auto&, auto& p) { std::swap(p.cuts[0], p.cuts[1]); }},
        Spoilt{PlanFault::cutNotEdgeToEdge, [](auto&, auto& p) { p.cuts[2].at = mm(700); }},
        Spoilt{PlanFault::stripTooNarrow, [](auto& q, auto&) { q.rules.leastStrip = mm(150); }},
        Spoilt{PlanFault::pieceNotCutOut, [](auto&, auto& p) { p.placed[1].at.x = mm(299); }},
        Spoilt{PlanFault::pieceNotCutOut, [](auto&, auto& p) { p.placed[1].at = p.placed[0].at; }},
        Spoilt{PlanFault::pieceInTrim, [](auto& q, auto&) { q.sheets[0].trim.left = mm(5); }},
        Spoilt{PlanFault::wrongSize, [](auto& q, auto&) { q.pieces[0].width = mm(301); }},
        Spoilt{PlanFault::wrongSize, [](auto& q, auto&) { q.pieces[0].overlap = mm(1); }},
        Spoilt{PlanFault::wrongGrain,
               [](auto& q, auto&) { q.sheets[0].grain = GrainWay::alongWidth; }},
        Spoilt{PlanFault::turnedAgainstRule,
               [](auto& q, auto& p) {
                   q.rules.mayTurn = false;
                   p.placed[0].isTurned = true;
               }},
        Spoilt{PlanFault::tooManyPlaced, [](auto& q, auto&) { q.pieces[0].count = 1; }},
        Spoilt{PlanFault::leftOutMiscounted, [](auto&, auto& p) { p.leftOut.clear(); }},
        Spoilt{PlanFault::offcutNotCutOut,
               [](auto&, auto& p) { p.offcuts[0].at.height = mm(281); }},
        Spoilt{PlanFault::offcutTooSmall, [](auto& q, auto&) { q.rules.leastOffcut = mm(101); }},
        Spoilt{PlanFault::wrongOffcutGrain,
               [](auto&, auto& p) { p.offcuts[0].grain = GrainWay::none; }},
        Spoilt{PlanFault::areasDoNotAddUp, [](auto&, auto& p) { p.offcuts.pop_back(); }},
        Spoilt{PlanFault::wrongValue, [](auto&, auto& p) { p.value += 1; }},
        Spoilt{PlanFault::wrongCost, [](auto&, auto& p) { p.cost = 0; }}));

} // namespace
} // namespace headcap::core
