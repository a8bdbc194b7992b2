// Over random problems: every plan passes the independent check, an exhaustive search agrees with
// what is said to be proved, and what is asked twice is answered alike.
#include "core/cutting/plan_cuts.h"

#include <map>
#include <random>

#include <gtest/gtest.h>

#include "core/cutting/plan_check.h"
#include "core/cutting/plan_json.h"

namespace headcap::core {
namespace {

Length mm(std::int64_t n) {
    return Length::millimetres(n);
}

class Random {
public:
    explicit Random(unsigned seed) : m_engine(seed) {}
    int between(int low, int high) {
        return low + static_cast<int>(m_engine() % static_cast<unsigned>(high - low + 1));
    }
    bool oneIn(int n) { return between(1, n) == 1; }
    GrainWay grain() { return static_cast<GrainWay>(between(0, 2)); }

private:
    std::mt19937 m_engine;
};

StockSheet randomSheet(Random& random, int index) {
    StockSheet sheet{std::to_string(index), mm(random.between(60, 1000)),
                     mm(random.between(60, 800)), random.grain(), random.between(1, 3)};
    if (random.oneIn(3)) {
        sheet.cost = random.between(0, 500) * 1'000'000LL;
    }
    sheet.isKeptBack = random.oneIn(5);
    if (random.oneIn(3)) {
        sheet.trim = {mm(random.between(0, 9)), mm(random.between(0, 9)), mm(random.between(0, 9)),
                      mm(random.between(0, 9))};
    }
    if (random.oneIn(3)) {
        sheet.stretch = {random.between(0, 25'000), random.between(0, 4'000)};
    }
    return sheet;
}

WantedPiece randomPiece(Random& random, int index) {
    WantedPiece piece{std::to_string(index), Length::micrometres(random.between(100, 4000) * 100),
                      Length::micrometres(random.between(100, 4000) * 100), random.grain(),
                      random.between(1, 5)};
    if (random.oneIn(3)) {
        piece.width = mm(random.between(10, 400));
        piece.height = mm(random.between(10, 400));
    }
    if (random.oneIn(3)) {
        piece.value = random.between(0, 900) * 1'000'000LL;
    }
    piece.isPasted = random.oneIn(3);
    piece.overlap = random.oneIn(4) ? mm(random.between(1, 5)) : Length{};
    return piece;
}

CutProblem randomProblem(unsigned seed) {
    Random random(seed);
    CutProblem problem;
    const int sheets = random.between(1, 5);
    const int pieces = random.between(1, 10);
    for (int i = 0; i < sheets; ++i) {
        problem.sheets.push_back(randomSheet(random, i));
    }
    for (int i = 0; i < pieces; ++i) {
        problem.pieces.push_back(randomPiece(random, i));
    }
    problem.objective = random.oneIn(2) ? CutObjective::allPieces : CutObjective::mostValue;
    problem.rules.kerf =
        random.oneIn(2) ? Length::micrometres(random.between(0, 40) * 100) : Length{};
    problem.rules.leastStrip = random.oneIn(3) ? mm(random.between(1, 15)) : Length{};
    problem.rules.leastOffcut = random.oneIn(2) ? mm(random.between(0, 60)) : Length{};
    problem.rules.mayTurn = !random.oneIn(4);
    return problem;
}

SearchLimits smallLimits() {
    SearchLimits limits;
    limits.work = 3'000'000;
    return limits;
}

TEST(RandomPlans, passTheIndependentCheck) {
    for (unsigned seed = 1; seed <= 150; ++seed) {
        SCOPED_TRACE(seed);
        const CutProblem problem = randomProblem(seed);
        const auto plan = planCuts(problem, smallLimits());
        ASSERT_TRUE(plan) << static_cast<int>(plan.error().fault) << plan.error().field;
        for (const PlanFinding& finding : checkPlan(problem, *plan)) {
            ADD_FAILURE() << static_cast<int>(finding.fault) << " at " << finding.index;
        }
    }
}

TEST(RandomPlans, areTheSameWithTheSameLimits) {
    for (unsigned seed = 400; seed < 410; ++seed) {
        const CutProblem problem = randomProblem(seed);
        const auto first = planCuts(problem, smallLimits());
        const auto second = planCuts(problem, smallLimits());
        ASSERT_TRUE(first && second);
        EXPECT_EQ(cutPlanJson(problem, *first), cutPlanJson(problem, *second)) << seed;
    }
}

// Every guillotine pattern of a tiny sheet, cut by cut in whole millimetres: slow, and obvious.
class Exhaustive {
public:
    explicit Exhaustive(const CutProblem& problem) : m_problem(problem) {}

    std::int64_t best() {
        std::int64_t best = 0;
        const StockSheet& sheet = m_problem.sheets[0];
        for (const auto& [counts, value] : patterns(side(sheet.width), side(sheet.height))) {
            best = std::max(best, value);
        }
        return best;
    }

private:
    using Patterns = std::map<std::vector<int>, std::int64_t>;
    static int side(Length length) { return static_cast<int>(length.count() / 1'000'000); }

    const Patterns& patterns(int width, int height) {
        const auto [at, isNew] = m_known.try_emplace({width, height});
        if (!isNew) {
            return at->second;
        }
        Patterns found;
        found[std::vector<int>(m_problem.pieces.size())] = 0;
        for (std::size_t i = 0; i < m_problem.pieces.size(); ++i) {
            const WantedPiece& piece = m_problem.pieces[i];
            const int w = side(piece.width), h = side(piece.height);
            const bool turns = m_problem.rules.mayTurn && h <= width && w <= height;
            if ((w <= width && h <= height) || turns) {
                std::vector<int> one(m_problem.pieces.size());
                one[i] = 1;
                found[one] = *piece.value;
            }
        }
        for (int a = 1; a <= width / 2; ++a) {
            combine(patterns(a, height), patterns(width - a, height), found);
        }
        for (int b = 1; b <= height / 2; ++b) {
            combine(patterns(width, b), patterns(width, height - b), found);
        }
        return m_known[{width, height}] = std::move(found);
    }

    void combine(const Patterns& a, const Patterns& b, Patterns& found) const {
        for (const auto& [countsA, valueA] : a) {
            for (const auto& [countsB, valueB] : b) {
                std::vector<int> sum = countsA;
                bool isWithin = true;
                for (std::size_t i = 0; i < sum.size(); ++i) {
                    sum[i] += countsB[i];
                    isWithin = isWithin && sum[i] <= m_problem.pieces[i].count;
                }
                if (isWithin) {
                    found[sum] = valueA + valueB;
                }
            }
        }
    }

    const CutProblem& m_problem;
    std::map<std::pair<int, int>, Patterns> m_known;
};

TEST(RandomPlans, areBestWhereAnExhaustiveSearchCanTell) {
    for (unsigned seed = 1; seed <= 150; ++seed) {
        SCOPED_TRACE(seed);
        Random random(seed);
        CutProblem problem;
        problem.objective = CutObjective::mostValue;
        problem.rules.mayTurn = random.oneIn(2);
        problem.sheets.push_back({"s", mm(random.between(4, 11)), mm(random.between(4, 9))});
        const int types = random.between(1, 4);
        for (int i = 0; i < types; ++i) {
            WantedPiece piece{std::to_string(i), mm(random.between(1, 6)),
                              mm(random.between(1, 5))};
            piece.count = random.between(1, 3);
            piece.value = random.between(1, 30) * 1'000'000LL;
            problem.pieces.push_back(piece);
        }
        const auto plan = planCuts(problem, SearchLimits{});
        ASSERT_TRUE(plan);
        EXPECT_TRUE(plan->isProvedBest);
        EXPECT_EQ(plan->value, Exhaustive(problem).best());
    }
}

} // namespace
} // namespace headcap::core
