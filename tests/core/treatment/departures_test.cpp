#include "core/treatment/departures.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/treatment/cost.h"
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
    EXPECT_EQ(costAsDone(job.file, "EUR")->net, (Money{lines * 6'000, "EUR"}));
    job.file.steps.front().minutes = Minutes{90};
    EXPECT_EQ(costAsDone(job.file, "EUR")->net, (Money{lines * 6'000 + 3'000, "EUR"}));
}

// A limit is of what the owner pays, as the audit holds the price approved against it.
TEST(Departures, aLimitIsHeldAgainstTheCostWithItsTax) {
    FinishedJob job;
    for (ProposalLine& line : job.file.lines) {
        line.price = Money{5'005, "EUR"};
        line.minutes = Minutes{0};
    }
    const auto lines = static_cast<std::int64_t>(job.file.lines.size());
    Proposal& proposal = job.file.proposals.front();
    proposal.taxPpm = 100'000;
    proposal.taxPerLine = true; // 500.5 a line goes up
    const auto isOver = [&](std::int64_t limit) {
        job.file.decisions.front().limit = Money{limit, "EUR"};
        const auto all = departures(job.file, job.clock);
        return std::ranges::find(all, DepartureKind::overLimit, &Departure::kind) != all.end();
    };
    const std::int64_t byLine = lines * (5'005 + 501);
    EXPECT_EQ(costAsDone(job.file, "EUR")->gross, (Money{byLine, "EUR"}));
    EXPECT_FALSE(isOver(byLine));
    EXPECT_TRUE(isOver(byLine - 1));
    EXPECT_TRUE(isOver(lines * 5'005)) << "kept before tax only";
    proposal.taxPerLine = false;
    const Money net{lines * 5'005, "EUR"};
    EXPECT_EQ(costAsDone(job.file, "EUR")->gross, *sum(net, shareOf(net, 100'000)));
}

// Work in one currency and materials in another: neither hides the other.
TEST(Departures, eachCurrencyIsSummedByItself) {
    FinishedJob job;
    for (ProposalLine& line : job.file.lines) {
        line.price = Money{6'000, "EUR"};
        line.minutes = Minutes{0};
        line.materialsCost = Money{100, "CHF"};
    }
    const auto lines = static_cast<std::int64_t>(job.file.lines.size());
    EXPECT_EQ(costAsDone(job.file, "EUR")->net, (Money{lines * 6'000, "EUR"}));
    EXPECT_EQ(costAsDone(job.file, "CHF")->net, (Money{lines * 100, "CHF"}));
    EXPECT_FALSE(costAsDone(job.file, "GBP").has_value());
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
