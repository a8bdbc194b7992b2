#include "core/custody/follow_ups.h"

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;

TEST(FollowUps, areDueOnTheirDayAndOverdueAfterIt) {
    tests::JobBuilder b;
    FollowUp followUp{.id = b.ids.next<FollowUp>(), .job = b.file.job.id, .what = "Look again"};
    EXPECT_FALSE(isDue(followUp, day(2031, 3, 6))); // on no day
    followUp.dueOn = day(2031, 3, 6);
    EXPECT_FALSE(isDue(followUp, day(2031, 3, 5)));
    EXPECT_TRUE(isDue(followUp, day(2031, 3, 6)));
    EXPECT_FALSE(isOverdue(followUp, day(2031, 3, 6)));
    EXPECT_TRUE(isOverdue(followUp, day(2031, 3, 7)));
    followUp.doneOn = day(2031, 3, 8);
    EXPECT_FALSE(isDue(followUp, day(2031, 3, 9)));
    EXPECT_FALSE(isOverdue(followUp, day(2031, 3, 9)));
}

} // namespace
} // namespace headcap::core
