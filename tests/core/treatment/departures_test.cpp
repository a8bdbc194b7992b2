#include "core/treatment/departures.h"

#include <gtest/gtest.h>

#include "tests/support/apply_change.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::applyTo;
using tests::day;
using tests::FinishedJob;

TEST(Departures, thereAreNoneWhereTheApprovedWasDone) {
    const FinishedJob job;
    EXPECT_TRUE(departures(job.file, job.clock).empty());
}

TEST(Departures, anUncoveringThatNoLineCoversIsOne) {
    FinishedJob job;
    job.step("lifting_pastedown", "upper pastedown", day(2031, 3, 21));
    const auto all = departures(job.file, job.clock);
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all.front().kind, DepartureKind::doneNotApproved);
    EXPECT_NE(all.front().sentence.find("upper pastedown"), std::string::npos);
}

TEST(Departures, eachIsOpenUntilItIsExplained) {
    FinishedJob job;
    job.step("surface_cleaning", "boards", day(2031, 3, 21));
    const ProposalOption option = job.file.options.front();
    job.line(option, "boxing");
    for (ProposalLine& line : job.file.lines) {
        line.price = Money{20'000, "EUR"};
    }
    job.file.decisions.front().limit = Money{10'000, "EUR"};
    const auto all = departures(job.file, job.clock);
    ASSERT_EQ(all.size(), 3U);
    for (const Departure& one : all) {
        EXPECT_TRUE(one.isOpen()) << one.sentence;
        applyTo(job.file, explain(job.file, one.subject, ruleOf(one.kind), "agreed by telephone",
                                  job.anyone(), job.clock.now(), job.ids));
    }
    for (const Departure& one : departures(job.file, job.clock)) {
        EXPECT_FALSE(one.isOpen()) << one.sentence;
        EXPECT_EQ(one.explanation->text, "agreed by telephone");
    }
}

TEST(Departures, anExplanationAnswersItsOwnRecordAndRule) {
    FinishedJob job;
    job.step("surface_cleaning", "boards", day(2031, 3, 21));
    const RecordRef ref = refOf(job.file.steps.back().id);
    applyTo(job.file, explain(job.file, ref, "approved_not_done", "no matter", job.anyone(),
                              job.clock.now(), job.ids));
    EXPECT_TRUE(departures(job.file, job.clock).front().isOpen());
}

TEST(Departures, aLineThatTookLongerCostsMoreAndOneThatTookLessItsPrice) {
    FinishedJob job;
    for (ProposalLine& line : job.file.lines) {
        line.price = Money{6'000, "EUR"};
        line.minutes = Minutes{60};
    }
    for (Step& step : job.file.steps) {
        step.minutes = Minutes{30};
    }
    const auto lines = static_cast<std::int64_t>(job.file.lines.size());
    EXPECT_EQ(costAsDone(job.file), (Money{lines * 6'000, "EUR"}));
    job.file.steps.front().minutes = Minutes{90};
    EXPECT_EQ(costAsDone(job.file), (Money{lines * 6'000 + 3'000, "EUR"}));
}

TEST(Departures, whatIsNotYetDoneIsNoDepartureAtTheBench) {
    FinishedJob job;
    const ProposalOption option = job.file.options.front();
    job.line(option, "boxing");
    job.file.job.state = JobState::atTheBench;
    EXPECT_TRUE(departures(job.file, job.clock).empty());
}

} // namespace
} // namespace headcap::core
