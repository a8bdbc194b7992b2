#include "core/treatment/clocks.h"

#include <cstdlib>

#include <gtest/gtest.h>

#include "core/treatment/setting_times.h"
#include "tests/support/apply_change.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::applyTo;
using tests::at;
using tests::day;
using tests::JobBuilder;

constexpr Minutes kTwenty{20};

class ClocksTest : public testing::Test {
protected:
    const BenchClock& start(const ClockStart& what, Instant now) {
        const auto change = startClock(b.file, what, now, b.ids);
        EXPECT_TRUE(change);
        applyTo(b.file, *change);
        return b.file.clocks.back();
    }
    ClockStart guarding(const std::string& place) {
        return {.who = b.anyone(), .technique = "guarding", .place = place};
    }

    JobBuilder b;
    Instant nine = at(day(2031, 4, 2), 9);
};

TEST_F(ClocksTest, runUntilTheyAreStoppedAndNotAfter) {
    const Id<BenchClock> id = start(guarding("K7"), nine).id;
    EXPECT_EQ(ranFor(b.file.clocks.back(), nine + kTwenty), kTwenty);
    applyTo(b.file, *stopClock(b.file, id, nine + kTwenty));
    EXPECT_TRUE(runningClocks(b.file).empty());
    EXPECT_EQ(ranFor(b.file.clocks.back(), nine + std::chrono::hours{30}), kTwenty);
    ASSERT_EQ(clocksToLog(b.file).size(), 1U);
}

TEST_F(ClocksTest, severalRunAtOnceEachForItsOwnWork) {
    start(guarding("K7"), nine);
    start(guarding("K8"), nine + Minutes{5});
    start({.who = b.person("T. Vale", "TV").id, .technique = "guarding", .place = "K7"}, nine);
    EXPECT_EQ(runningClocks(b.file).size(), 3U);
    EXPECT_EQ(runningClocks(b.file).back()->place, "K8");
    EXPECT_EQ(startClock(b.file, guarding("K7"), nine, b.ids).error(), ClockProblem::alreadyRuns);
}

TEST_F(ClocksTest, refuseWhatCantBe) {
    EXPECT_EQ(startClock(b.file, {.who = b.anyone()}, nine, b.ids).error(),
              ClockProblem::nothingSaid);
    const Id<BenchClock> id = start(guarding("K7"), nine).id;
    const Id<BenchClock> none = b.ids.next<BenchClock>();
    EXPECT_EQ(stopClock(b.file, none, nine).error(), ClockProblem::notThere);
    EXPECT_EQ(dropClock(b.file, none).error(), ClockProblem::notThere);
    applyTo(b.file, *stopClock(b.file, id, nine + kTwenty));
    EXPECT_EQ(stopClock(b.file, id, nine).error(), ClockProblem::notRunning);
    b.file.clocks.back().step = b.ids.next<Step>();
    EXPECT_EQ(dropClock(b.file, id).error(), ClockProblem::alreadyTaken);
}

TEST_F(ClocksTest, aLineIsStartedOnceAndFoundAgain) {
    const Proposal proposal = b.proposal();
    const ProposalOption option = b.option(proposal, "A");
    const ProposalLine line = b.line(option, "guarding");
    const ClockStart what = clockFor(line, b.anyone());
    start(what, nine);
    ASSERT_NE(runningFor(b.file, line.id), nullptr);
    EXPECT_EQ(startClock(b.file, what, nine, b.ids).error(), ClockProblem::alreadyRuns);
    const Step step =
        stepOf(b.file, *runningFor(b.file, line.id), b.anyone(), nine + kTwenty, b.ids);
    EXPECT_EQ(step.line, line.id);
    EXPECT_EQ(step.technique, "guarding");
    EXPECT_EQ(step.minutes, kTwenty);
    EXPECT_EQ(step.at, nine);
    EXPECT_EQ(step.reversibility, Reversibility::yes);
}

TEST_F(ClocksTest, theStepThatTakesItsMinutesStopsIt) {
    const BenchClock clock = start(guarding("K7"), nine);
    const Step step = stepOf(b.file, clock, b.anyone(), nine + kTwenty, b.ids);
    auto change = logStep({step}, shelfOf(b.file), b.file.techniques, b.ids);
    ASSERT_TRUE(change);
    giveTo(*change, b.file, clock, step.id, nine + kTwenty);
    applyTo(b.file, *change);
    EXPECT_TRUE(runningClocks(b.file).empty());
    EXPECT_TRUE(clocksToLog(b.file).empty());
    EXPECT_EQ(b.file.clocks.front().step, step.id);
}

TEST_F(ClocksTest, aMachineWhoseClockWasSetBackTakesNoTime) {
    const BenchClock clock = start(guarding("K7"), nine);
    EXPECT_EQ(ranFor(clock, nine - kTwenty), Minutes{0});
    const auto change = stopClock(b.file, clock.id, nine - kTwenty);
    ASSERT_TRUE(change);
    applyTo(b.file, *change);
    EXPECT_GE(*b.file.clocks.front().stoppedAt, b.file.clocks.front().startedAt);
}

TEST_F(ClocksTest, aTouchOfSecondsIsAMinute) {
    const BenchClock clock = start(guarding("K7"), nine);
    EXPECT_EQ(ranFor(clock, nine + std::chrono::seconds{12}), Minutes{1});
    EXPECT_EQ(ranFor(clock, nine + std::chrono::seconds{90}), Minutes{2});
}

TEST_F(ClocksTest, oneThatRanThroughTheNightIsSaidToBeForgotten) {
    const BenchClock clock = start(guarding("K7"), nine);
    EXPECT_FALSE(isForgotten(clock, nine + std::chrono::hours{4}));
    EXPECT_TRUE(isForgotten(clock, nine + std::chrono::hours{23}));
}

// The workshop is in Berlin for this: the last Sundays of March and October 2031.
class DaylightSaving : public ClocksTest {
protected:
    DaylightSaving() : m_was(std::getenv("TZ")) { setenv("TZ", "Europe/Berlin", 1); }
    ~DaylightSaving() override {
        if (m_was != nullptr) {
            setenv("TZ", m_before.c_str(), 1);
        } else {
            unsetenv("TZ");
        }
    }

private:
    const char* m_was;
    std::string m_before = m_was == nullptr ? "" : m_was;
};

TEST_F(DaylightSaving, aClockCountsTheHourThatWasThereAndNotTheOneOnTheWall) {
    // 01:30 to 03:30 by the wall in March is one hour; 02:30 to 02:30 in October too.
    const BenchClock spring = start(guarding("K7"), at(day(2031, 3, 30), 0, 30));
    EXPECT_EQ(ranFor(spring, at(day(2031, 3, 30), 1, 30)), Minutes{60});
    const BenchClock autumn = start(guarding("K8"), at(day(2031, 10, 26), 0, 30));
    EXPECT_EQ(ranFor(autumn, at(day(2031, 10, 26), 1, 30)), Minutes{60});
}

TEST_F(DaylightSaving, aSettingTimeOfTwelveHoursIsTwelveHoursLong) {
    const SystemClock berlin;
    for (const Day eve : {day(2031, 3, 29), day(2031, 10, 25)}) {
        Step& step = b.step("pasting_down", "pastedowns", eve);
        step.at = at(eve, 19);
        step.minutes = Minutes{0};
        step.setsUntil = step.at + std::chrono::hours{12};
        const auto times = settingTimes(b.file, at(eve, 19) + std::chrono::hours{11});
        ASSERT_EQ(times.size(), 1U);
        EXPECT_EQ(times.front().left, Minutes{60});
        EXPECT_EQ(berlin.dayOf(times.front().until),
                  Day{std::chrono::sys_days{eve} + std::chrono::days{1}});
        b.file.steps.clear();
    }
}

} // namespace
} // namespace headcap::core
