#include "core/custody/first_work.h"

#include <gtest/gtest.h>

#include "core/custody/job_states.h"
#include "tests/support/random_job.h"

namespace headcap::core {
namespace {

using tests::day;
using tests::JobBuilder;

Change changeAfter(JobState state, StepKind kind) {
    JobBuilder b;
    b.file.job.state = state;
    b.step("tear_mending", "K7", day(2031, 3, 18));
    Step step = b.file.steps.back();
    step.kind = kind;
    Change change{.sentence = "Step logged"};
    change.add(step);
    bringToTheBench(change, b.file, step, b.ids);
    return change;
}

TEST(FirstWork, bringsAnApprovedJobToTheBenchInTheSameEntry) {
    const Change change = changeAfter(JobState::approved, StepKind::treatment);
    ASSERT_EQ(change.writes.size(), 3U);
    EXPECT_EQ(std::get<Job>(change.writes[1].record).state, JobState::atTheBench);
    const auto& moved = std::get<StateChange>(change.writes[2].record);
    EXPECT_EQ(moved.fromState, JobState::approved);
    EXPECT_EQ(moved.at, std::get<Step>(change.writes[0].record).at);
    EXPECT_NE(change.sentence.find("at the bench"), std::string::npos);
    EXPECT_EQ(changeAfter(JobState::approved, StepKind::removal).writes.size(), 3U);
}

TEST(FirstWork, leavesEveryOtherJobWhereItIs) {
    for (std::size_t i = 0; i < EnumNames<JobState>::kNames.size(); ++i) {
        const auto state = static_cast<JobState>(i);
        const bool isPast = state == JobState::passed || state == JobState::reported;
        if (state != JobState::approved && !isPast) {
            EXPECT_EQ(changeAfter(state, StepKind::treatment).writes.size(), 1U) << wordsFor(state);
        }
    }
}

TEST(FirstWork, bringsWhatWasPassedBackToTheBench) {
    for (const JobState state : {JobState::passed, JobState::reported}) {
        const Change change = changeAfter(state, StepKind::treatment);
        ASSERT_EQ(change.writes.size(), 3U) << wordsFor(state);
        EXPECT_EQ(std::get<Job>(change.writes[1].record).state, JobState::atTheBench);
        EXPECT_NE(std::get<StateChange>(change.writes[2].record).why.find("K7"), std::string::npos);
        EXPECT_NE(change.sentence.find("at the bench"), std::string::npos);
    }
}

TEST(FirstWork, whatWasDoneBeforeThePassingAndLoggedLateLeavesItPassed) {
    JobBuilder b;
    b.file.job.state = JobState::passed;
    b.file.stateChanges.push_back({.id = b.ids.next<StateChange>(),
                                   .job = b.file.job.id,
                                   .fromState = JobState::atTheBench,
                                   .toState = JobState::passed,
                                   .at = tests::at(day(2031, 3, 19), 12)});
    EXPECT_FALSE(bringsToTheBench(b.file, StepKind::treatment, tests::at(day(2031, 3, 19), 11)));
    EXPECT_TRUE(bringsToTheBench(b.file, StepKind::treatment, tests::at(day(2031, 3, 19), 13)));
    EXPECT_FALSE(bringsToTheBench(b.file, StepKind::examination, tests::at(day(2031, 3, 20))));
}

TEST(FirstWork, layingOpenIsWorkOnTheBook) {
    EXPECT_EQ(changeAfter(JobState::approved, StepKind::uncovering).writes.size(), 3U);
}

TEST(FirstWork, lookingIsNoWorkOnTheBook) {
    EXPECT_EQ(changeAfter(JobState::approved, StepKind::examination).writes.size(), 1U);
    EXPECT_EQ(changeAfter(JobState::approved, StepKind::incident).writes.size(), 1U);
}

} // namespace
} // namespace headcap::core
