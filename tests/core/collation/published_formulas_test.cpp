#include <gtest/gtest.h>

#include "core/collation/collate.h"
#include "tests/reference/collation_formulas.h"

namespace headcap::core {
namespace {

class Published : public testing::TestWithParam<tests::PublishedFormula> {};

TEST_P(Published, hasItsLeavesAndAgreesWithItsExtent) {
    const tests::PublishedFormula& one = GetParam();
    const CollateAnswer answer = collate({one.formula, one.extent, ""});
    for (const ReadingProblem& problem : answer.problems) {
        ADD_FAILURE() << one.formula << " at " << problem.at << ": " << problem.message;
    }
    ASSERT_TRUE(answer.leafTotal) << one.formula;
    EXPECT_EQ(*answer.leafTotal, one.leaves) << one.formula << " (" << one.source << ")";
    EXPECT_EQ(answer.leaves.size(), static_cast<std::size_t>(one.leaves));
    if (answer.extent) {
        EXPECT_TRUE(answer.extent->agrees) << one.formula << ": " << answer.extent->explanation;
    }
}

TEST_P(Published, printsAndReadsBackTheSame) {
    const tests::PublishedFormula& one = GetParam();
    const CollateAnswer answer = collate({one.formula, one.extent, ""});
    const FormulaReading again = readFormula(answer.formula);
    EXPECT_TRUE(again.problems.empty()) << answer.formula;
    EXPECT_EQ(again.makeUp, answer.makeUp) << answer.formula << " / " << toFormula(again.makeUp);
}

INSTANTIATE_TEST_SUITE_P(Sources, Published, testing::ValuesIn(tests::kPublishedFormulas));

// DCRM-L, 16 Sept. 2019: the two are the same book.
TEST(CyclicCounts, areTheSameHoweverTheyAreWritten) {
    EXPECT_EQ(readFormula("A⁴ B-E⁸/⁴ F⁸").makeUp, readFormula("A-F⁴/⁸").makeUp);
    EXPECT_EQ(toFormula(readFormula("A⁴ B-E⁸/⁴ F⁸").makeUp), "A–F⁴/⁸");
}

} // namespace
} // namespace headcap::core
