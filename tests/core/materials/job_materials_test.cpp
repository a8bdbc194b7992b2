#include "core/materials/job_materials.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;
using tests::FinishedJob;
using tests::JobBuilder;

Amount grams(std::int64_t milligrams) {
    return Amount::of(Mass::milligrams(milligrams));
}

// Whatever the record holds, each standing use and each lot of a facsimile is shown, once.
TEST(JobMaterials, leaveOutNothingThatWentIn) {
    FinishedJob b;
    std::vector<Id<MaterialUse>> shown;
    std::size_t leaves = 0;
    for (const JobMaterial& material : jobMaterials(b.file, b.clock)) {
        for (const MaterialInStep& one : material.uses) {
            shown.push_back(one.use->id);
            EXPECT_EQ(one.use->lot, material.lot->id);
        }
        leaves += material.facsimiles.size();
    }
    EXPECT_EQ(shown.size(), b.file.uses.size());
    std::ranges::sort(shown);
    EXPECT_EQ(std::unique(shown.begin(), shown.end()), shown.end());
    EXPECT_EQ(leaves, 2U); // the paper of the leaf, and the paste that holds it
}

TEST(JobMaterials, addWhatWasUsedAndSayWhatIsLeft) {
    JobBuilder b;
    b.lot("31-002", "wheat starch paste", grams(10'000));
    b.use(b.step("tear_mending", "B2", day(2031, 4, 1)), "31-002", grams(400));
    b.use(b.step("guarding", "B3", day(2031, 4, 1)), "31-002", grams(600));
    const auto materials = jobMaterials(b.file, b.clock);
    ASSERT_EQ(materials.size(), 1U);
    EXPECT_EQ(materials.front().used, grams(1'000));
    EXPECT_EQ(materials.front().balance, grams(9'000));
}

TEST(JobMaterials, oneUnmeasuredUseLeavesTheSumUnknown) {
    JobBuilder b;
    b.lot("31-002", "wheat starch paste", grams(10'000));
    b.use(b.step("tear_mending", "B2", day(2031, 4, 1)), "31-002", grams(400));
    b.use(b.step("guarding", "B3", day(2031, 4, 1)), "31-002", grams(1)).amount.reset();
    EXPECT_FALSE(jobMaterials(b.file, b.clock).front().used.has_value());
}

TEST(JobMaterials, aStruckStepPutNothingIn) {
    JobBuilder b;
    b.lot("31-002", "wheat starch paste", grams(10'000));
    b.use(b.step("tear_mending", "B2", day(2031, 4, 1)), "31-002", grams(400));
    b.file.steps.back().struckAt = b.clock.now();
    EXPECT_TRUE(jobMaterials(b.file, b.clock).empty());
}

TEST(JobMaterials, sayHowOldALotWasWhenItWasUsed) {
    JobBuilder b;
    b.lot("31-002", "wheat starch paste", grams(10'000)).goodUntil = day(2031, 4, 1);
    b.use(b.step("tear_mending", "B2", day(2031, 3, 1)), "31-002", grams(400));
    b.use(b.step("tear_mending", "B3", day(2031, 4, 2)), "31-002", grams(400));
    const auto materials = jobMaterials(b.file, b.clock);
    ASSERT_EQ(materials.front().uses.size(), 2U);
    EXPECT_NE(materials.front().uses[0].ageThen, LotAge::overdue);
    EXPECT_EQ(materials.front().uses[1].ageThen, LotAge::overdue);
    EXPECT_EQ(materials.front().ageNow, LotAge::overdue);
}

TEST(JobMaterials, whatHasNoLotComesLastUnderItsOwnWords) {
    JobBuilder b;
    b.lot("31-002", "wheat starch paste", grams(10'000));
    b.use(b.step("tear_mending", "B2", day(2031, 4, 1)), "31-002", grams(1)).lot.reset();
    b.file.uses.back().material = "blotting paper";
    b.use(b.step("tear_mending", "B3", day(2031, 4, 1)), "31-002", grams(1));
    const auto materials = jobMaterials(b.file, b.clock);
    ASSERT_EQ(materials.size(), 2U);
    EXPECT_EQ(materials[1].lot, nullptr);
    EXPECT_EQ(materials[1].name, "blotting paper");
}

TEST(JobMaterials, aUseWithoutAWayOfRemovalTakesTheStepsOwn) {
    JobBuilder b;
    b.lot("31-002", "wheat starch paste", grams(10'000));
    Step& step = b.step("tear_mending", "B2", day(2031, 4, 1));
    step.undoing = "with moisture";
    b.use(step, "31-002", grams(1)).removal.clear();
    EXPECT_EQ(jobMaterials(b.file, b.clock).front().uses.front().removal, "with moisture");
}

} // namespace
} // namespace headcap::core
