// Cuts gathered and put in order: the same pieces, no more cuts, and every cut edge to edge through
// a part that is there; and the steps a binder sets the gauge for.
#include "core/cutting/bench_order.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <random>

#include <gtest/gtest.h>

#include "core/cutting/cut_steps.h"
#include "core/cutting/plan_cuts.h"

namespace headcap::core {
namespace {

Length mm(std::int64_t n) {
    return Length::millimetres(n);
}

// Takes the sheet apart cut by cut; nothing where a cut does not go through one part edge to edge.
std::optional<std::vector<TaskRect>> takenApart(const SheetLayout& layout, const SheetTask& task) {
    std::vector<TaskRect> parts{{0, 0, task.width, task.height}};
    for (const TaskCut& cut : layout.cuts) {
        const auto at = std::ranges::find_if(parts, [&](const TaskRect& part) {
            const bool isWide = cut.isAtX ? cut.from == part.y && cut.to == part.y + part.height
                                          : cut.from == part.x && cut.to == part.x + part.width;
            const std::int64_t begin = cut.isAtX ? part.x : part.y;
            return isWide && cut.at > begin &&
                   cut.at < begin + (cut.isAtX ? part.width : part.height);
        });
        if (at == parts.end()) {
            return std::nullopt;
        }
        TaskRect second = *at;
        if (cut.isAtX) {
            second.x = cut.at;
            second.width -= cut.at - at->x;
            at->width = cut.at - at->x;
        } else {
            second.y = cut.at;
            second.height -= cut.at - at->y;
            at->height = cut.at - at->y;
        }
        parts.push_back(second);
    }
    return parts;
}

std::vector<std::tuple<std::int64_t, std::int64_t, std::int64_t, std::int64_t>>
sorted(const std::vector<TaskRect>& rects) {
    std::vector<std::tuple<std::int64_t, std::int64_t, std::int64_t, std::int64_t>> all;
    for (const TaskRect& one : rects) {
        all.emplace_back(one.x, one.y, one.width, one.height);
    }
    std::ranges::sort(all);
    return all;
}

std::vector<TaskRect> rectsOf(const SheetLayout& layout, const SheetTask& task) {
    std::vector<TaskRect> rects = layout.free;
    for (const TaskPlaced& placed : layout.placed) {
        const SheetOption& size = task.options[static_cast<std::size_t>(placed.option)];
        rects.push_back({placed.x, placed.y, size.width, size.height});
    }
    return rects;
}

double sumOfSquares(const std::vector<TaskRect>& rects) {
    return std::accumulate(rects.begin(), rects.end(), 0.0, [](double sum, const TaskRect& one) {
        const double area = static_cast<double>(one.width) * static_cast<double>(one.height);
        return sum + area * area;
    });
}

std::vector<int> optionsOf(const SheetLayout& layout) {
    std::vector<int> options;
    for (const TaskPlaced& placed : layout.placed) {
        options.push_back(placed.option);
    }
    std::ranges::sort(options);
    return options;
}

std::int64_t narrowest(const std::vector<TaskRect>& rects) {
    std::int64_t least = std::numeric_limits<std::int64_t>::max();
    for (const TaskRect& one : rects) {
        least = std::min({least, one.width, one.height});
    }
    return least;
}

struct Drawn {
    SheetTask task;
    CutTree tree;
};

// Few sizes, so that many stand alike; joined at random into one tree.
Drawn randomTree(unsigned seed) {
    std::mt19937 random(seed);
    const auto between = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    Drawn drawn{{400, 300, {}, {}, {}, between(0, 1) * between(1, 12)}, {}};
    for (int type = 0; type < 4; ++type) {
        drawn.task.options.push_back({type, between(1, 8) * 10, between(1, 6) * 10});
        drawn.task.most.push_back(100);
        drawn.task.value.push_back(1);
    }
    std::vector<int> roots;
    const int pieces = between(1, 16);
    for (int i = 0; i < pieces; ++i) {
        roots.push_back(drawn.tree.addPiece(between(0, 3)));
    }
    while (roots.size() > 1) {
        const auto at = static_cast<std::size_t>(between(0, static_cast<int>(roots.size()) - 2));
        roots[at] = drawn.tree.addJoin(between(0, 1) == 0, roots[at], roots[at + 1]);
        roots.erase(roots.begin() + static_cast<std::ptrdiff_t>(at) + 1);
    }
    drawn.tree.root = roots.front();
    return drawn;
}

TEST(BenchOrder, keepsThePiecesAndTakesNoMoreCutsOverRandomTrees) {
    int trees = 0, fewer = 0;
    for (unsigned seed = 1; seed <= 4'000; ++seed) {
        SCOPED_TRACE(seed);
        const auto [task, tree] = randomTree(seed);
        if (!isAllowed(tree, task)) {
            continue;
        }
        ++trees;
        const SheetLayout before = layOut(tree, task);
        SheetLayout after = before;
        setInBenchOrder(after, task);
        ASSERT_LE(after.cuts.size(), before.cuts.size());
        fewer += after.cuts.size() < before.cuts.size() ? 1 : 0;
        ASSERT_EQ(after.placed.size(), before.placed.size());
        ASSERT_EQ(optionsOf(after), optionsOf(before));
        ASSERT_GE(sumOfSquares(after.free), sumOfSquares(before.free)); // never smaller offcuts
        const auto parts = takenApart(after, task);
        ASSERT_TRUE(parts);
        ASSERT_EQ(sorted(*parts), sorted(rectsOf(after, task)));
        ASSERT_GE(narrowest(after.free), narrowest(before.free));
    }
    EXPECT_GT(trees, 500);
    EXPECT_GT(fewer, 50);
}

TEST(BenchOrder, isSettledAfterOneTime) {
    for (unsigned seed = 1; seed <= 500; ++seed) {
        const auto [task, tree] = randomTree(seed);
        if (!isAllowed(tree, task)) {
            continue;
        }
        SheetLayout once = layOut(tree, task);
        setInBenchOrder(once, task);
        SheetLayout twice = once;
        setInBenchOrder(twice, task);
        EXPECT_EQ(once.cuts.size(), twice.cuts.size()) << seed;
        EXPECT_EQ(sorted(once.free), sorted(twice.free)) << seed;
    }
}

CutProblem endpapersAndGuards() {
    CutProblem problem;
    problem.sheets.push_back({"31-030", mm(640), mm(900), GrainWay::alongHeight});
    problem.pieces = {{"fold", mm(242), mm(196), GrainWay::alongHeight, 4},
                      {"wrapper", mm(420), mm(210), GrainWay::alongHeight, 1},
                      {"guard", mm(24), mm(186), GrainWay::alongHeight, 6}};
    problem.rules.leastStrip = mm(5);
    problem.rules.leastOffcut = mm(40);
    return problem;
}

// Six guards in one strip need one trim to their height, and five or six cuts of 24 mm; trimmed
// one by one they would need twelve.
TEST(BenchOrder, trimsGuardsBeforeTheyAreCutApartAndSetsTheGaugeOnce) {
    const CutProblem problem = endpapersAndGuards();
    SearchLimits limits;
    limits.work = 50'000'000;
    const auto plan = planCuts(problem, limits);
    ASSERT_TRUE(plan);
    ASSERT_EQ(plan->placed.size(), 11U);
    const auto steps = cutSteps(problem, *plan, {0, 1});
    const auto guards = std::ranges::count_if(steps, [](const CutStep& step) {
        return step.axis == CutAxis::x && step.measure == mm(24);
    });
    EXPECT_EQ(guards, 1);
    EXPECT_LE(plan->cuts.size(), 15U);
}

// By hand: a sheet of 100 mm in five strips of 20 mm takes four cuts at one setting; with a kerf of
// 1 mm and 104 mm the gauge is the same.
TEST(CutSteps, equalStripsAreOneStepAtOneMeasure) {
    for (const int kerf : {0, 1}) {
        CutProblem problem;
        problem.sheets.push_back({"s", mm(100 + 4 * kerf), mm(50)});
        problem.pieces.push_back({"strip", mm(20), mm(50), GrainWay::none, 5});
        problem.rules.kerf = mm(kerf);
        const auto plan = planCuts(problem, SearchLimits{});
        ASSERT_TRUE(plan);
        const auto steps = cutSteps(problem, *plan, {0, 1});
        ASSERT_EQ(steps.size(), 1U);
        EXPECT_EQ(steps[0].measure, mm(20));
        EXPECT_EQ(steps[0].times(), 4);
        EXPECT_EQ(steps[0].part, (CutRect{{}, {}, mm(100 + 4 * kerf), mm(50)}));
    }
}

// Each step names the part it is taken off, and all cuts are in the steps, in their order.
TEST(CutSteps, holdEveryCutOnceInItsOrder) {
    const CutProblem problem = endpapersAndGuards();
    SearchLimits limits;
    limits.work = 5'000'000;
    const auto plan = planCuts(problem, limits);
    ASSERT_TRUE(plan);
    int next = 1;
    for (const CutStep& step : cutSteps(problem, *plan, {0, 1})) {
        EXPECT_EQ(step.first, next);
        EXPECT_FALSE(step.part.width.isZero());
        const SheetCut& cut = plan->cuts[static_cast<std::size_t>(step.first) - 1];
        EXPECT_EQ(cut.at, step.measure + (step.axis == CutAxis::x ? step.part.x : step.part.y));
        next = step.last + 1;
    }
    EXPECT_EQ(next, static_cast<int>(plan->cuts.size()) + 1);
}

} // namespace
} // namespace headcap::core
