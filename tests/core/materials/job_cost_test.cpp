#include "core/materials/job_cost.h"

#include <gtest/gtest.h>

#include "core/report/materials_sheet.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;

class CostOfAJob : public testing::Test {
protected:
    CostOfAJob() {
        b.lot("31-001", "paste", Amount::of(Mass::grams(100))).cost = Money{2'000, "EUR"};
        b.lot("31-002", "tissue", Amount::sheets(10));
        b.use(b.step("tear_mending", "B2", day(2031, 4, 1)), "31-001", Amount::of(Mass::grams(3)));
        b.use(b.step("tear_mending", "B3", day(2031, 4, 1)), "31-002", Amount::sheets(1));
    }
    tests::JobBuilder b;
};

TEST_F(CostOfAJob, isWhatItsUsesCostAndSaysOfHowManyNoneIsKnown) {
    const JobCost cost = jobCost(b.file);
    EXPECT_EQ(cost.spent, (std::vector{Money{60, "EUR"}}));
    EXPECT_EQ(cost.unknown, 1U);
    EXPECT_TRUE(cost.estimated.empty());
}

TEST_F(CostOfAJob, aStruckStepCostNothing) {
    b.file.steps.front().struckAt = b.clock.now();
    EXPECT_TRUE(jobCost(b.file).spent.empty());
}

TEST_F(CostOfAJob, standsBesideWhatTheLinesAgreedOnEstimated) {
    auto& proposal = b.proposal();
    auto& option = b.option(proposal, "Repair");
    b.line(option, "tear_mending").materialsCost = Money{500, "EUR"};
    b.line(option, "guarding").materialsCost = Money{250, "EUR"};
    b.decision(proposal, DecisionKind::approved).option = option.id;
    EXPECT_EQ(jobCost(b.file).estimated, (std::vector{Money{750, "EUR"}}));
}

TEST_F(CostOfAJob, isSaidWithWhatIsNotKnownOfIt) {
    EXPECT_EQ(sentenceOf(jobCost(b.file)),
              "Materials used: 0.60 EUR. The cost of 1 further use is not known. Nothing was "
              "estimated for them.");
    b.file.uses.erase(b.file.uses.begin());
    EXPECT_EQ(sentenceOf(jobCost(b.file)),
              "What the materials cost is not known: the lots of 1 use have no price. Nothing was "
              "estimated for them.");
    b.file.uses.clear();
    EXPECT_EQ(sentenceOf(jobCost(b.file)),
              "Materials used: nothing. Nothing was estimated for them.");
}

// Whatever went in stands on the printed sheet, with its lot, and the sum below.
TEST_F(CostOfAJob, thePrintedSheetNamesEveryUse) {
    b.file.uses.front().overrideReason = "no other was at hand";
    const std::string text = plainText(materialsSheet(b.file, {}, b.clock));
    for (const char* words : {"31-001", "31-002", "B2", "B3", "3 g", "1 sheet", "0.60 EUR",
                              "not known", "no other was at hand", "No piece was cut"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words;
    }
}

} // namespace
} // namespace headcap::core
