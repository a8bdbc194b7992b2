#include "core/custody/leaf_count.h"

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;
using tests::FinishedJob;

void countOut(FinishedJob& job, ReleaseAnswer answer, const char* words) {
    ReleaseCheck check{.id = job.ids.next<ReleaseCheck>(), .job = job.file.job.id};
    check.key = "leaf_tally";
    check.answer = answer;
    check.why = words;
    job.file.releaseChecks = {check};
}

// The finished job lacked K5, which is supplied in facsimile: 107 in, 108 out.
TEST(LeafCount, whatComesInAndIsPutInGoesOut) {
    FinishedJob job;
    EXPECT_EQ(leafCountOf(job.file).leaves.in, 107);
    EXPECT_EQ(leafCountOf(job.file).leaves.added, 1);
    EXPECT_EQ(leafCountOf(job.file).leaves.removed, 0);
    EXPECT_EQ(leafCountOf(job.file).leaves.due(), 108);
    EXPECT_EQ(leafCountText(job.file),
              "107 of 108 leaves on arrival, K5 supplied: 108 leaves go out");
}

TEST(LeafCount, whatIsTakenOutIsCountedWhereItNamesLeaves) {
    FinishedJob job;
    job.step("leaf_removing", "B8", day(2031, 3, 18)).removed = "B7–B8";
    EXPECT_EQ(leafCountOf(job.file).leaves.removed, 2);
    job.file.steps.back().removed = "3 leaves";
    EXPECT_EQ(leafCountOf(job.file).leaves.removed, 3);
    job.file.steps.back().removed = "old linings, glue";
    EXPECT_EQ(leafCountOf(job.file).leaves.removed, 0);
}

TEST(LeafCount, aNumberGivenIsHeldAgainstIt) {
    FinishedJob job;
    EXPECT_FALSE(leafCountOf(job.file).isCountedOut);
    countOut(job, ReleaseAnswer::open, "107");
    EXPECT_FALSE(leafCountOf(job.file).isCountedOut);
    countOut(job, ReleaseAnswer::done, "");
    EXPECT_TRUE(leafCountOf(job.file).isCountedOut);
    EXPECT_FALSE(leafCountOf(job.file).leaves.isApart());
    countOut(job, ReleaseAnswer::done, "counted twice: 108");
    EXPECT_FALSE(leafCountOf(job.file).leaves.isApart());
    countOut(job, ReleaseAnswer::done, "107 leaves");
    EXPECT_TRUE(leafCountOf(job.file).leaves.isApart());
    job.file.collations.front().leavesPresent = 0; // not known
    EXPECT_FALSE(leafCountOf(job.file).leaves.isApart());
}

// Of a set of which one volume was not collated nobody knows how many leaves go out.
TEST(LeafCount, aVolumeNotCollatedIsNoneOfTheSum) {
    FinishedJob job;
    Item first = job.file.item;
    first.id = job.ids.next<Item>();
    first.volumeLabel = "vol. 1";
    Item second = first;
    second.id = job.ids.next<Item>();
    second.volumeLabel = "vol. 2";
    job.file.parts = {first, second};
    job.file.collations.front().part = first.id;
    EXPECT_FALSE(leafCountOf(job.file).leaves.due());
    EXPECT_EQ(leafCountText(job.file), "107 of 108 leaves of vol. 1 on arrival, vol. 2 not "
                                       "counted and K5 supplied");
    job.file.parts.pop_back();
    EXPECT_EQ(leafCountOf(job.file).leaves.in, 107);
    job.file.parts.push_back(second);
    job.file.collations.front().part.reset(); // of the whole set
    EXPECT_EQ(leafCountOf(job.file).leaves.in, 107);
}

// A plate is no leaf of the text, and is counted for itself.
TEST(LeafCount, platesAreCountedApart) {
    FinishedJob job;
    auto& collation = job.file.collations.front();
    collation.platesCalledFor = 24;
    collation.platesPresent = 22;
    auto second = job.file.facsimiles.front();
    second.id = job.ids.next<Facsimile>();
    second.place = "pl. IX";
    job.file.facsimiles.push_back(second);
    EXPECT_EQ(leafCountOf(job.file).leaves.due(), 108);
    EXPECT_EQ(leafCountOf(job.file).plates.due(), 23);
    EXPECT_EQ(leafCountText(job.file), "107 of 108 leaves and 22 of 24 plates on arrival, K5 and "
                                       "pl. IX supplied: 108 leaves and 23 plates go out");
    job.step("leaf_removing", "pl. II", day(2031, 3, 18)).removed = "pl. II";
    EXPECT_EQ(leafCountOf(job.file).plates.due(), 22);
    EXPECT_EQ(leafCountOf(job.file).leaves.removed, 0);
}

TEST(LeafCount, anAnswerIsReadOfLeavesAndOfPlates) {
    struct Row {
        const char* said;
        std::optional<std::int64_t> leaves, plates;
    };
    for (const Row& row :
         {Row{"28 leaves and 24 plates", 28, 24}, Row{"28 + 24", 28, 24},
          Row{"24 plates, 28 leaves", 28, 24}, Row{"108", 108, std::nullopt},
          Row{"counted twice: 108", 108, std::nullopt}, Row{"3 plates", std::nullopt, 3},
          Row{"all there", std::nullopt, std::nullopt}}) {
        FinishedJob job;
        countOut(job, ReleaseAnswer::done, row.said);
        EXPECT_EQ(leafCountOf(job.file).leaves.out, row.leaves) << row.said;
        EXPECT_EQ(leafCountOf(job.file).plates.out, row.plates) << row.said;
    }
}

} // namespace
} // namespace headcap::core
