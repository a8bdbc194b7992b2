// The demo's content as the trade would judge it: its formulas read and add up, its finished jobs
// stand the audit, its working ones still have something to settle.
#include <algorithm>

#include <gtest/gtest.h>

#include "core/audit/audit.h"
#include "core/collation/formula.h"
#include "core/collation/leaf_ref.h"
#include "core/treatment/techniques.h"
#include "tests/demo/built_demo.h"

namespace headcap::demo {
namespace {

using namespace core;

std::vector<AuditPoint> auditOf(const std::string& shortTitle) {
    const auto file = loadJobFile(theDemo().stores().records, theDemo().job(shortTitle));
    return audit(*file, theDemo().clock());
}

class FinishedJob : public ::testing::TestWithParam<const char*> {};

TEST_P(FinishedJob, leavesNothingToSettle) {
    for (const AuditPoint& point : auditOf(GetParam())) {
        EXPECT_NE(point.severity, AuditSeverity::mustSettle)
            << point.rule << ": " << point.sentence;
    }
}

INSTANTIATE_TEST_SUITE_P(Demo, FinishedJob,
                         ::testing::Values("Vane, Sea-atlas", "Tolliver, Bee-keepers contentment",
                                           "Valley hymnal", "Fellmongers' day-book"));

TEST(DemoTrade, aWorkingJobStillHasSomethingToSettle) {
    EXPECT_GT(countOf(auditOf("Crumlin, Tables"), AuditSeverity::mustSettle), 0U);
}

TEST(DemoTrade, showsTheAtlasFirst) {
    const auto file = loadJobFile(theDemo().stores().records, theDemo().job("Vane, Sea-atlas"));
    EXPECT_EQ(theDemo().firstJob(), file->job.number);
    EXPECT_EQ(file->facsimiles.size(), 2U);
    EXPECT_EQ(file->reports.size(), 1U);
}

TEST(DemoTrade, formulasReadAndCountTheLeavesCalledFor) {
    int read = 0;
    for (const auto& one : all<Collation>(theDemo().stores().records)) {
        const Collation& collation = one.record;
        if (collation.formula.empty()) {
            continue;
        }
        const FormulaReading reading = readFormula(collation.formula);
        EXPECT_TRUE(reading.problems.empty()) << collation.formula;
        const LeafTally leaves = tally(reading.makeUp);
        EXPECT_TRUE(leaves.complete()) << collation.formula;
        EXPECT_EQ(leaves.known - leaves.lacking, collation.leavesCalledFor) << collation.formula;
        ++read;
    }
    EXPECT_GE(read, 9);
}

TEST(DemoTrade, placesOfCollationFindingsAreLeaves) {
    for (const auto& one : all<CollationFinding>(theDemo().stores().records)) {
        EXPECT_TRUE(parseLeafSet(one.record.place)) << one.record.place;
    }
}

TEST(DemoTrade, stepsAreOfKnownTechniques) {
    for (const auto& one : all<Step>(theDemo().stores().records)) {
        EXPECT_NE(TechniquesInForce{}.named(one.record.technique), nullptr) << one.record.technique;
    }
}

} // namespace
} // namespace headcap::demo
