#include "core/report/issuing.h"

#include <gtest/gtest.h>

#include "core/custody/job_states.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::at;
using tests::day;
using tests::FinishedJob;

IssuedReport& issued(FinishedJob& job, std::int64_t version, Instant when) {
    return job.file.reports.emplace_back(IssuedReport{.id = job.ids.next<IssuedReport>(),
                                                      .job = job.file.job.id,
                                                      .version = version,
                                                      .issuedAt = when,
                                                      .who = job.anyone()});
}

TEST(Issuing, aNumberIsNeverGivenTwice) {
    FinishedJob job;
    EXPECT_EQ(latestReport(job.file), nullptr);
    EXPECT_EQ(nextReportVersion(job.file), 1);
    issued(job, 3, at(day(2031, 3, 30)));
    issued(job, 1, at(day(2031, 3, 28)));
    EXPECT_EQ(latestReport(job.file)->version, 3);
    EXPECT_EQ(nextReportVersion(job.file), 4);
}

TEST(Issuing, whatMustBeSettledKeepsItFromBeingIssued) {
    FinishedJob job;
    EXPECT_FALSE(whatKeepsFromIssuing(job.file, job.clock, ""));
    job.file.facsimiles.front().marking.clear();
    const auto obstacle = whatKeepsFromIssuing(job.file, job.clock, "");
    ASSERT_TRUE(obstacle);
    EXPECT_EQ(obstacle->problem, IssueProblem::pointsOpen);
    ASSERT_EQ(obstacle->open.size(), 1U);
    EXPECT_EQ(obstacle->open.front().severity, AuditSeverity::mustSettle);
}

TEST(Issuing, aLaterReportSaysWhatHasChanged) {
    FinishedJob job;
    issued(job, 1, at(day(2031, 3, 30)));
    const auto obstacle = whatKeepsFromIssuing(job.file, job.clock, "");
    ASSERT_TRUE(obstacle);
    EXPECT_EQ(obstacle->problem, IssueProblem::changesMissing);
    EXPECT_TRUE(obstacle->open.empty());
    EXPECT_FALSE(whatKeepsFromIssuing(job.file, job.clock, "the owner's name put right"));
}

TEST(Issuing, aPassedJobIsReportedByTheSameEntry) {
    FinishedJob job;
    const IssuedReport report = issued(job, 1, at(day(2031, 3, 30)));
    job.file.reports.clear();
    job.file.revisions[refOf(job.file.job.id)] = Revision{41};
    const Change change = issueChange(job.file, report, job.ids);
    EXPECT_EQ(change.who, report.who);
    ASSERT_EQ(change.writes.size(), 3U);
    EXPECT_EQ(std::get<IssuedReport>(change.writes[0].record), report);
    EXPECT_EQ(std::get<Job>(change.writes[1].record).state, JobState::reported);
    EXPECT_EQ(change.writes[1].read, Revision{41});
    const auto& moved = std::get<StateChange>(change.writes[2].record);
    EXPECT_EQ(moved.fromState, JobState::passed);
    EXPECT_EQ(moved.at, report.issuedAt);
    EXPECT_EQ(moved.who, report.who);
    EXPECT_NE(change.sentence.find("Report 1 of "), std::string::npos);
    EXPECT_NE(change.sentence.find("reported"), std::string::npos);
}

TEST(Issuing, aReportOfABookInAnyOtherStateLeavesItThere) {
    for (std::size_t i = 0; i < EnumNames<JobState>::kNames.size(); ++i) {
        FinishedJob job;
        const IssuedReport report = issued(job, 2, at(day(2031, 3, 30)));
        job.file.job.state = static_cast<JobState>(i);
        if (job.file.job.state != JobState::passed) {
            EXPECT_EQ(issueChange(job.file, report, job.ids).writes.size(), 1U)
                << wordsFor(job.file.job.state);
        }
    }
}

TEST(Issuing, theStepsSinceAReportAreThoseThatStandAndCameAfterIt) {
    FinishedJob job;
    const IssuedReport report = issued(job, 1, at(day(2031, 3, 30)));
    EXPECT_TRUE(stepsSince(job.file, report).empty());
    job.step("tear_mending", "B2", day(2031, 3, 31)).struckAt = at(day(2031, 4, 1));
    EXPECT_TRUE(stepsSince(job.file, report).empty());
    job.step("tear_mending", "B3", day(2031, 3, 31));
    ASSERT_EQ(stepsSince(job.file, report).size(), 1U);
    EXPECT_EQ(stepsSince(job.file, report).front()->place, "B3");
}

} // namespace
} // namespace headcap::core
