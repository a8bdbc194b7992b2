#include "core/custody/job_states.h"

#include <array>
#include <string_view>

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::at;
using tests::day;
using tests::JobBuilder;

constexpr std::size_t kStates = EnumNames<JobState>::kNames.size();

// From each row to each column, in the order of the states: no way, forward, or with a reason.
// The order of the work goes forward; back and across is allowed and recorded with why; what was
// given back is not held, declined or withdrawn; what was declined or withdrawn is given back.
constexpr std::array<std::string_view, kStates> kWays{
    ".frrrrrrrrr", // received
    "r.frrrrrrrr", // surveyed
    "rr.frrrrrrr", // proposed
    "rrr.frrrrrr", // approved
    "rrrr.frrrrr", // at the bench
    "rrrrr.frrrr", // passed
    "rrrrrr.frrr", // reported
    "rrrrrrr....", // returned
    "rrrrrrrr.rr", // on hold
    "rrrrrrrfr.r", // declined
    "rrrrrrrfrr.", // withdrawn
};

TEST(JobStates, theTableOfWays) {
    JobBuilder b;
    for (std::size_t from = 0; from < kStates; ++from) {
        for (std::size_t to = 0; to < kStates; ++to) {
            SCOPED_TRACE(std::string{nameOf(static_cast<JobState>(from))} + " to " +
                         std::string{nameOf(static_cast<JobState>(to))});
            b.file.job.state = static_cast<JobState>(from);
            StateMove move{static_cast<JobState>(to), b.anyone(), at(day(2031, 4, 2)), ""};
            const auto silent = changeState(b.file.job, {}, move, b.ids);
            move.why = "asked for";
            const auto reasoned = changeState(b.file.job, {}, move, b.ids);
            const char way = kWays[from][to];
            EXPECT_EQ(silent.has_value(), way == 'f');
            EXPECT_EQ(reasoned.has_value(), way != '.');
            if (way == 'r') {
                EXPECT_EQ(silent.error(), StateProblem::reasonMissing);
            } else if (way == '.') {
                const auto why = from == to ? StateProblem::sameState : StateProblem::notAllowed;
                EXPECT_EQ(silent.error(), why);
                EXPECT_EQ(reasoned.error(), why);
            }
        }
    }
}

TEST(JobStates, theOrderOfTheWorkNeedsNoReason) {
    JobState state = JobState::received;
    for (const JobState next :
         {JobState::surveyed, JobState::proposed, JobState::approved, JobState::atTheBench,
          JobState::passed, JobState::reported, JobState::returned}) {
        EXPECT_EQ(wayBetween(state, next), StateWay::forward) << nameOf(next);
        EXPECT_EQ(wayBetween(next, state), StateWay::withReason) << nameOf(next);
        state = next;
    }
    EXPECT_EQ(wayBetween(JobState::returned, JobState::onHold), StateWay::none);
    EXPECT_EQ(wayBetween(JobState::declined, JobState::returned), StateWay::forward);
}

TEST(JobStates, aChangeKeepsWhoWhenAndWhy) {
    JobBuilder b;
    const auto change = changeState(
        b.file.job, Revision{7},
        {JobState::onHold, b.anyone(), at(day(2031, 4, 2)), "the owner is travelling"}, b.ids);
    ASSERT_TRUE(change);
    ASSERT_EQ(change->writes.size(), 2U);
    EXPECT_EQ(change->writes[0].read, Revision{7});
    EXPECT_EQ(std::get<Job>(change->writes[0].record).state, JobState::onHold);
    const auto& state = std::get<StateChange>(change->writes[1].record);
    EXPECT_EQ(state.fromState, JobState::received);
    EXPECT_EQ(state.why, "the owner is travelling");
    EXPECT_EQ(state.who, b.anyone());
    EXPECT_EQ(change->sentence, "Job 2031-004: on hold, was received: the owner is travelling");
}

TEST(Numbers, followTheGreatest) {
    using std::chrono::year;
    EXPECT_EQ(nextJobNumber(std::nullopt, year{2026}), "2026-001");
    EXPECT_EQ(nextJobNumber("2026-014", year{2026}), "2026-015");
    EXPECT_EQ(nextJobNumber("2025-914", year{2026}), "2026-001");
    EXPECT_EQ(nextLotNumber("26-099", year{2026}), "26-100");
    EXPECT_EQ(nextLotNumber(std::nullopt, year{2005}), "05-001");
    EXPECT_EQ(nextLotNumber("26-Z99", year{2026}), std::nullopt);
    EXPECT_EQ(nextLotNumber("26-odd", year{2026}), std::nullopt);
}

// The store gives the greatest text: a number must always be greater than those before.
TEST(Numbers, keepTheOrderOfTheirText) {
    std::optional<std::string> last = nextLotNumber(std::nullopt, std::chrono::year{2026});
    int count = 1;
    while (const auto next = nextLotNumber(last, std::chrono::year{2026})) {
        ASSERT_LT(*last, *next);
        last = next;
        ++count;
    }
    EXPECT_EQ(count, 3'599);
}

} // namespace
} // namespace headcap::core
