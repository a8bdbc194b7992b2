// When the work of a line ended and till when it sets. Lines are invented; the days are those on
// which the clocks of London changed in 2019 by the tz database: 31 March, 1:00 to 2:00; 27
// October, 2:00 back to 1:00.
#include "core/treatment/line_moments.h"

#include <gtest/gtest.h>

#include "tests/support/in_time_zone.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using namespace std::chrono_literals;
using tests::day;
using tests::FixedClock;
using tests::InTimeZone;

Instant utc(const char* text) {
    return *instantFromIso(text);
}

StepLine read(std::string_view line, const Clock& clock, const UtcOffset& offset) {
    static const tests::JobBuilder kJob;
    static const Shelf kShelf = shelfOf(kJob.file);
    return timed(readStepLine(line, {.shelf = kShelf, .people = {}, .today = clock.today()}), clock,
                 offset);
}

// A bench in Kathmandu's time, 5:45 ahead, at 14:10 of Wednesday 2 April 2031.
class LineMoments : public testing::Test {
protected:
    std::string endOf(std::string_view line) const {
        return isoText(core::endOf(read(line, clock, offset), clock, offset));
    }
    std::optional<Minutes> setsOf(std::string_view line) const {
        return read(line, clock, offset).sets;
    }

    FixedClock clock{utc("2031-04-02T08:25:00Z"), 5h + 45min};
    UtcOffset offset{[](Instant) { return 5h + 45min; }};
};

TEST_F(LineMoments, theWorkEndsAtTheHourAndDayItSays) {
    for (const auto& [line, end] : {
             std::pair{"guarded B1 20 min", "2031-04-02T08:25:00.000Z"},
             std::pair{"guarded B1 9:00-9:20", "2031-04-02T03:35:00.000Z"},
             std::pair{"yesterday guarded B1 9:00-9:20", "2031-04-01T03:35:00.000Z"},
             std::pair{"yesterday guarded B1 20 min", "2031-04-01T08:25:00.000Z"},
             std::pair{"today guarded B1 20 min", "2031-04-02T08:25:00.000Z"},
             std::pair{"guarded B1 9:00-12:00, 45 min", "2031-04-02T06:15:00.000Z"},
             std::pair{"guarded B1 15:00-15:20", "2031-04-02T09:35:00.000Z"},
         }) {
        EXPECT_EQ(endOf(line), end) << line;
    }
}

TEST_F(LineMoments, theStepBeginsItsMinutesBeforeThat) {
    const StepLine line = read("yesterday guarded B1 9:00-9:20", clock, offset);
    tests::JobBuilder b;
    b.person("Jan Roe", "JR");
    const Shelf shelf = shelfOf(b.file);
    const LoggedStep logged =
        stepFrom(line, b.file.job.id, b.anyone(), core::endOf(line, clock, offset),
                 {.shelf = shelf, .people = b.file.people}, b.ids);
    EXPECT_EQ(isoText(logged.step.at), "2031-04-01T03:15:00.000Z");
    EXPECT_EQ(logged.step.minutes, 20min);
}

TEST_F(LineMoments, itSetsFromTheEndOfTheWorkTillTheHourItSays) {
    EXPECT_EQ(setsOf("guarded B1 20 min, dries till 4 pm"), 110min);
    EXPECT_EQ(setsOf("guarded B1 20 min, dries until tomorrow 9am"), 18h + 50min);
    EXPECT_EQ(setsOf("guarded B1 9:00-9:20, dries till 10:00"), 40min);
    // Of the day of the step where none is said.
    EXPECT_EQ(setsOf("yesterday guarded B1 9:00-9:20, dries till 4 pm"), 6h + 40min);
    // Over before the work was done, so it says nothing.
    EXPECT_EQ(setsOf("guarded B1 20 min, dries till 1 pm"), std::nullopt);
}

// A day without an hour is at this hour of it by the clock on the wall, summer or winter.
TEST(LineMomentsInSummer, aDayBeforeTheClocksChangedKeepsTheHour) {
    const InTimeZone london("Europe/London");
    const FixedClock clock{utc("2019-04-01T09:00:00Z"), 1h}; // 10:00
    const StepLine line = read("on 30 March guarded B1 20 min", clock, systemUtcOffset);
    ASSERT_EQ(line.day, day(2019, 3, 30));
    EXPECT_EQ(isoText(endOf(line, clock, systemUtcOffset)), "2019-03-30T10:00:00.000Z");
}

TEST(LineMomentsInSummer, workOverAChangeOfTheClocksTakesTheTimeThatPassed) {
    const InTimeZone london("Europe/London");
    const FixedClock spring{utc("2019-03-31T11:00:00Z"), 1h};
    const StepLine forward = read("guarded B1 0:30am to 2:30am", spring, systemUtcOffset);
    EXPECT_EQ(forward.minutes, 60min);
    EXPECT_EQ(isoText(endOf(forward, spring, systemUtcOffset)), "2019-03-31T01:30:00.000Z");
    EXPECT_EQ(read("guarded B1 0:30am to 2:30am, 50 min", spring, systemUtcOffset).minutes, 50min);

    const FixedClock autumn{utc("2019-10-27T11:00:00Z")};
    EXPECT_EQ(read("guarded B1 0:30am to 2:30am", autumn, systemUtcOffset).minutes, 180min);
    // The hour that comes twice is the first of the two at both ends.
    const StepLine twice = read("guarded B1 1:10am to 1:40am", autumn, systemUtcOffset);
    EXPECT_EQ(twice.minutes, 30min);
    EXPECT_EQ(isoText(endOf(twice, autumn, systemUtcOffset)), "2019-10-27T00:40:00.000Z");
    // What sets over night does so an hour longer.
    const FixedClock evening{utc("2019-10-26T17:00:00Z"), 1h}; // 18:00
    EXPECT_EQ(read("guarded B1 20 min, dries until tomorrow 9am", evening, systemUtcOffset).sets,
              16h);
}

} // namespace
} // namespace headcap::core
