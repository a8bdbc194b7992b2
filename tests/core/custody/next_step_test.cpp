#include "core/custody/next_step.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/audit/audit.h"
#include "core/custody/page_state.h"
#include "core/custody/release_list.h"
#include "tests/support/random_job.h"

namespace headcap::core {
namespace {

using tests::at;
using tests::day;
using tests::FinishedJob;
using tests::JobBuilder;
using tests::RandomJob;

std::string sentenceOf(const JobBuilder& job) {
    return nextStep(job.file, job.clock).sentence;
}

TEST(NextStep, leadsANewJobThroughWhatItLacks) {
    JobBuilder b;
    EXPECT_EQ(sentenceOf(b), "Photograph it as it came.");
    b.photograph(PhotoRole::before);
    EXPECT_EQ(sentenceOf(b), "Collate it.");
    b.file.collations.push_back(Collation{.id = b.ids.next<Collation>(),
                                          .job = b.file.job.id,
                                          .part = std::nullopt,
                                          .who = std::nullopt});
    EXPECT_EQ(sentenceOf(b), "Finish the collation.");
    b.file.collations.front().finishedOn = day(2031, 3, 7);
    b.lacking("K5");
    EXPECT_EQ(sentenceOf(b), "Tell the owner of the leaves it lacks.");
    b.notice(NoticeSubject::collation, day(2031, 3, 8));
    EXPECT_EQ(sentenceOf(b), "Survey its condition.");
    b.finding("leaves", "torn", "B2");
    b.file.examinations.push_back(Examination{.id = b.ids.next<Examination>(),
                                              .job = b.file.job.id,
                                              .part = std::nullopt,
                                              .onDay = day(2031, 3, 8),
                                              .who = std::nullopt});
    b.file.job.state = JobState::surveyed;
    EXPECT_EQ(sentenceOf(b), "Write the proposal.");
    const Proposal proposal = b.proposal();
    const NextStep waiting = nextStep(b.file, b.clock);
    EXPECT_EQ(waiting.group, WorklistGroup::waitingForOwner);
    EXPECT_EQ(waiting.sentence, "Proposal 1 was sent on 11 March 2031: no answer yet.");
    b.decision(proposal, DecisionKind::approved);
    EXPECT_EQ(sentenceOf(b), "The owner approved: the work can begin.");
}

TEST(NextStep, atTheBenchNamesTheNextApprovedLine) {
    FinishedJob job;
    job.file.job.state = JobState::atTheBench;
    job.file.steps.pop_back();
    const NextStep next = nextStep(job.file, job.clock);
    EXPECT_EQ(next.group, WorklistGroup::atWork);
    EXPECT_EQ(next.sentence, "Next: Tipping in, the last line.");
    EXPECT_EQ(next.page, Page::bench);
}

TEST(NextStep, aSettingTimeComesBeforeAllElse) {
    FinishedJob job;
    job.file.job.state = JobState::atTheBench;
    job.file.steps.back().setsUntil =
        job.clock.now() + std::chrono::minutes{44} + std::chrono::seconds{30};
    const NextStep next = nextStep(job.file, job.clock);
    EXPECT_EQ(next.group, WorklistGroup::setting);
    EXPECT_EQ(next.settingLeft, Minutes{45});
    EXPECT_EQ(next.sentence, "Setting: Tipping in, K5.");
    job.clock.pass(std::chrono::minutes{45});
    EXPECT_NE(nextStep(job.file, job.clock).group, WorklistGroup::setting);
}

TEST(NextStep, aPassedJobIsReportedReturnedAndLookedAfter) {
    FinishedJob job;
    EXPECT_EQ(sentenceOf(job), "Issue the report: nothing is open.");
    job.file.facsimiles.front().marking.clear();
    EXPECT_EQ(sentenceOf(job), "Settle 1 point before the report is issued.");
    EXPECT_EQ(nextStep(job.file, job.clock).page, Page::collation);
    job.file.job.state = JobState::reported;
    EXPECT_EQ(nextStep(job.file, job.clock).group, WorklistGroup::toBeReturned);
    // What is given back is what the release list lets go.
    const auto open = static_cast<std::size_t>(std::ranges::count_if(
        releaseList(job.file, job.clock), [](const ReleaseRow& row) { return !row.isSettled(); }));
    ASSERT_GT(open, 1U);
    EXPECT_EQ(sentenceOf(job),
              "Settle " + std::to_string(open) + " points of the release list, then give it back.");
    for (const ReleaseRow& row : releaseList(job.file, job.clock)) {
        ReleaseCheck check{.id = job.ids.next<ReleaseCheck>(), .job = job.file.job.id};
        check.key = row.key;
        check.answer = ReleaseAnswer::explained;
        check.why = "seen to";
        job.file.releaseChecks.push_back(check);
    }
    EXPECT_EQ(sentenceOf(job), "Give it back with its report.");
    job.file.job.state = JobState::returned;
    EXPECT_EQ(nextStep(job.file, job.clock).group, WorklistGroup::finished);
    job.clock.set(at(day(2032, 3, 1)));
    EXPECT_EQ(sentenceOf(job), "Follow up: Ask whether K5 has turned up.");
}

// Issuing moves the job itself; one that was issued before it did so waits for that alone.
TEST(NextStep, aPassedJobWithItsReportIsNotToldToIssueIt) {
    FinishedJob job;
    job.file.reports.push_back({.id = job.ids.next<IssuedReport>(),
                                .job = job.file.job.id,
                                .issuedAt = at(day(2031, 3, 30)),
                                .who = job.anyone()});
    EXPECT_EQ(sentenceOf(job), "Report 1 is issued: mark the job as reported.");
    EXPECT_EQ(nextStep(job.file, job.clock).page, Page::report);
    Step later = job.file.steps.back();
    later.at = at(day(2031, 3, 31));
    job.file.steps.push_back(later);
    EXPECT_EQ(sentenceOf(job), "Issue report 2: there was work after report 1.");
    job.file.facsimiles.front().marking.clear();
    EXPECT_EQ(sentenceOf(job), "Settle 1 point before the report is issued.");
    job.file.steps.pop_back();
    EXPECT_EQ(sentenceOf(job), "Report 1 is issued: mark the job as reported.");
}

TEST(NextStep, knowsWhenAJobIsLate) {
    JobBuilder b;
    b.file.job.dueOn = day(2031, 4, 1);
    EXPECT_TRUE(nextStep(b.file, b.clock).overdue);
    b.file.job.dueOn = day(2031, 4, 2);
    EXPECT_FALSE(nextStep(b.file, b.clock).overdue);
}

TEST(NextStep, saysSomethingOfAnyJob) {
    for (std::uint64_t seed = 0; seed < 100; ++seed) {
        const RandomJob job{seed};
        EXPECT_TRUE(sentenceOf(job).ends_with('.')) << seed;
    }
}

TEST(PageState, tellsHollowHalfAndSolidApart) {
    JobBuilder fresh;
    const auto begun = pageStates(fresh.file, audit(fresh.file, fresh.clock));
    EXPECT_EQ(begun[0].progress, PageProgress::settled);
    for (std::size_t i = 1; i < begun.size(); ++i) {
        EXPECT_EQ(begun[i].progress, PageProgress::notBegun) << i;
    }
    FinishedJob job;
    const auto settled = pageStates(job.file, audit(job.file, job.clock));
    for (std::size_t i = 0; i < 7; ++i) {
        EXPECT_EQ(settled[i].progress, PageProgress::settled) << i;
    }
    EXPECT_EQ(settled[7].progress, PageProgress::begun);
    job.file.facsimiles.front().marking.clear();
    const auto open = pageStates(job.file, audit(job.file, job.clock));
    EXPECT_EQ(open[1].progress, PageProgress::begun);
    EXPECT_EQ(open[1].mustSettle, 1U);
}

} // namespace
} // namespace headcap::core
