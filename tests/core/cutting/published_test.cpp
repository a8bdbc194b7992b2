// The published guillotine instances, and the best values known of them (optima.tsv beside them
// says which are proven in print and which were only computed).
#include "core/cutting/plan_cuts.h"

#include <gtest/gtest.h>

#include "core/cutting/plan_check.h"
#include "tests/core/cutting/instances.h"

namespace headcap::core {
namespace {

using test::PublishedOptimum;

void expectValue(const PublishedOptimum& row) {
    SCOPED_TRACE(row.instance + ", " + row.variant + ", " + row.rotation);
    const std::optional<CutProblem> problem = row.problem();
    ASSERT_TRUE(problem);
    const auto plan = planCuts(*problem, usualLimits(problem->objective));
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->value, row.value * 1'000'000);
    EXPECT_TRUE(plan->isProvedBest);
    EXPECT_TRUE(checkPlan(*problem, *plan).empty());
}

void expectValues(bool proven) {
    const std::vector<PublishedOptimum> rows = test::publishedOptima();
    if (rows.empty()) {
        GTEST_SKIP() << "no cutting instances at " << test::cuttingFolder();
    }
    int compared = 0;
    for (const PublishedOptimum& row : rows) {
        if (row.isProven() == proven) {
            expectValue(row);
            ++compared;
        }
    }
    EXPECT_GT(compared, 0) << "no row of " << rows.size() << " is to be compared";
}

TEST(PublishedCutting, reachesEveryProvenOptimum) {
    expectValues(true);
}

TEST(PublishedCutting, agreesWithTheValuesOnlyComputed) {
    expectValues(false);
}

// Wang 1983 on 40 × 70: 2721 is proven in the results table of WSKH0929/EATKG_For_2KPG, row W.
TEST(PublishedCutting, cutsWangsSheet) {
    const auto problem = test::readInstance("wang3.dat", test::InstanceForm::wang, true, false);
    if (!problem) {
        GTEST_SKIP() << "no cutting instances at " << test::cuttingFolder();
    }
    const auto plan = planCuts(*problem, usualLimits(problem->objective));
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->value, 2'721'000'000);
}

} // namespace
} // namespace headcap::core
