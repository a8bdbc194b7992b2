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
    EXPECT_EQ(leafCountOf(job.file).in, 107);
    EXPECT_EQ(leafCountOf(job.file).added, 1);
    EXPECT_EQ(leafCountOf(job.file).removed, 0);
    EXPECT_EQ(leafCountOf(job.file).due(), 108);
    EXPECT_EQ(leafCountText(job.file), "107 of 108 leaves on arrival and K5 supplied: 108 go out");
}

TEST(LeafCount, whatIsTakenOutIsCountedWhereItNamesLeaves) {
    FinishedJob job;
    job.step("leaf_removing", "B8", day(2031, 3, 18)).removed = "B7–B8";
    EXPECT_EQ(leafCountOf(job.file).removed, 2);
    job.file.steps.back().removed = "3 leaves";
    EXPECT_EQ(leafCountOf(job.file).removed, 3);
    job.file.steps.back().removed = "old linings, glue";
    EXPECT_EQ(leafCountOf(job.file).removed, 0);
}

TEST(LeafCount, aNumberGivenIsHeldAgainstIt) {
    FinishedJob job;
    EXPECT_FALSE(leafCountOf(job.file).isCountedOut);
    countOut(job, ReleaseAnswer::open, "107");
    EXPECT_FALSE(leafCountOf(job.file).isCountedOut);
    countOut(job, ReleaseAnswer::done, "");
    EXPECT_TRUE(leafCountOf(job.file).isCountedOut);
    EXPECT_FALSE(leafCountOf(job.file).isApart());
    countOut(job, ReleaseAnswer::done, "counted twice: 108");
    EXPECT_FALSE(leafCountOf(job.file).isApart());
    countOut(job, ReleaseAnswer::done, "107 leaves");
    EXPECT_TRUE(leafCountOf(job.file).isApart());
    job.file.collations.front().leavesPresent = 0; // not known
    EXPECT_FALSE(leafCountOf(job.file).isApart());
}

// Plates are counted by themselves: none of them makes a leaf more.
TEST(LeafCount, platesAreCountedApartFromLeaves) {
    FinishedJob job;
    job.file.facsimiles.clear();
    Collation& collation = job.file.collations.front();
    collation.leavesPresent = collation.leavesCalledFor = 28;
    collation.platesPresent = 22;
    collation.platesCalledFor = 24;
    job.facsimile("pl. IX");
    job.facsimile("pl. XIV");
    const LeafCount count = leafCountOf(job.file);
    EXPECT_EQ(count.due(), 28);
    EXPECT_EQ(count.platesIn, 22);
    EXPECT_EQ(count.platesAdded, 2);
    EXPECT_EQ(leafCountText(job.file),
              "28 of 28 leaves and 22 of 24 plates on arrival, pl. IX supplied and pl. XIV "
              "supplied: 28 leaves and 24 plates go out");
    countOut(job, ReleaseAnswer::done, "28 leaves, 24 plates");
    EXPECT_FALSE(leafCountOf(job.file).isApart());
}

} // namespace
} // namespace headcap::core
