#include "core/materials/cut_for_job.h"

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::at;
using tests::day;
using tests::JobBuilder;

class CutForJobTest : public testing::Test {
protected:
    CutForJobTest() {
        b.material("text paper", MaterialClass::paper, Unit::sheet);
        b.lot("26-003", "text paper", Amount::sheets(10));
    }
    Cutting& cut(const char* plan) {
        return b.file.cuttings.emplace_back(Cutting{.id = b.ids.next<Cutting>(),
                                                    .job = b.file.job.id,
                                                    .at = at(day(2031, 3, 16)),
                                                    .plan = plan});
    }
    static constexpr auto kTwoFolds = R"({"placed": [
        {"piece": "endpaper fold", "sheet": "26-003", "sheet_no": 1},
        {"piece": "endpaper fold", "sheet": "26-003", "sheet_no": 1},
        {"piece": "guard", "sheet": "26-009", "sheet_no": 1}]})";

    JobBuilder b;
};

TEST_F(CutForJobTest, countsThePiecesOfEachLot) {
    cut(kTwoFolds);
    const auto all = cutForJob(b.file);
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].lot, "26-003");
    EXPECT_EQ(all[0].pieces, 2);
    EXPECT_EQ(all[0].names, std::vector<std::string>{"endpaper fold"});
    EXPECT_EQ(all[1].pieces, 1);
}

TEST_F(CutForJobTest, aCuttingTakenBackCutNothing) {
    cut(kTwoFolds).takenBackAt = at(day(2031, 3, 17));
    EXPECT_TRUE(cutForJob(b.file).empty());
}

TEST_F(CutForJobTest, aPlanThatCantBeReadCutNothing) {
    for (const char* plan :
         {"", "{", "[]", R"({"placed": 3})", R"({"placed": [3, {"sheet": 4}]})"}) {
        cut(plan);
    }
    EXPECT_TRUE(cutForJob(b.file).empty());
}

TEST_F(CutForJobTest, isUsedOnceAStandingStepNamesItsLot) {
    cut(kTwoFolds);
    EXPECT_EQ(cutAndNotUsed(b.file).size(), 2U);
    Step& step = b.step("endpapers", "front and back", day(2031, 3, 18));
    b.use(step, "26-003", Amount::sheets(1));
    ASSERT_EQ(cutAndNotUsed(b.file).size(), 1U);
    EXPECT_EQ(cutAndNotUsed(b.file).front().lot, "26-009");
    b.file.steps.back().struckAt = at(day(2031, 3, 19));
    EXPECT_EQ(cutAndNotUsed(b.file).size(), 2U);
}

} // namespace
} // namespace headcap::core
