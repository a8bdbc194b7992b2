#include "core/values/time.h"

#include <gtest/gtest.h>

#include "tests/support/in_time_zone.h"

namespace headcap::core {
namespace {

using namespace std::chrono_literals;
using std::chrono::sys_days;
using tests::InTimeZone;

constexpr Day kDay{std::chrono::year{2031}, std::chrono::March, std::chrono::day{5}};

TEST(IsoText, isOfTheMillisecondInUtc) {
    const Instant instant = sys_days{kDay} + 9h + 10min + 7ms;
    EXPECT_EQ(isoText(instant), "2031-03-05T09:10:00.007Z");
    EXPECT_EQ(instantFromIso("2031-03-05T09:10:00.007Z"), instant);
    EXPECT_EQ(instantFromIso("2031-03-05T09:10:00Z"), instant - 7ms);
    EXPECT_EQ(isoText(kDay), "2031-03-05");
    EXPECT_EQ(dayFromIso("2031-03-05"), kDay);
}

TEST(IsoText, readsWhatItWritesBeforeTheEpochToo) {
    for (std::int64_t at = -62'167'219'200'000; at < 253'402'300'799'999; at += 9'876'543'210'123) {
        const Instant instant{std::chrono::milliseconds{at}};
        ASSERT_EQ(instantFromIso(isoText(instant)), instant) << isoText(instant);
    }
    EXPECT_EQ(isoText(Instant{-1ms}), "1969-12-31T23:59:59.999Z");
}

TEST(IsoText, isNothingOutsideFourDigits) {
    EXPECT_EQ(isoText(Instant{std::chrono::milliseconds{253'402'300'800'000}}), "");
    EXPECT_EQ(isoText(Instant{std::chrono::milliseconds{-62'167'219'200'001}}), "");
    EXPECT_EQ(isoText(Day{std::chrono::year{2031}, std::chrono::February, std::chrono::day{30}}),
              "");
}

TEST(IsoText, refusesWhatIsNoTime) {
    for (const char* text :
         {"", "2031-03-05", "2031-03-05T09:10:00.000", "2031-03-05T24:00:00.000Z",
          "2031-03-05T09:60:00.000Z", "2031-03-05T09:10:60.000Z", "2031-02-30T09:10:00.000Z",
          "2031-03-05 09:10:00.000Z", "2031-03-05T09:10:00.00Z", "2031-03-05T09:10:00.000Z "}) {
        EXPECT_FALSE(instantFromIso(text).has_value()) << text;
    }
    for (const char* text :
         {"", "2031-3-05", "2031-13-01", "2031-02-29", "2031-03-05 ", "+031-03-05"}) {
        EXPECT_FALSE(dayFromIso(text).has_value()) << text;
    }
    EXPECT_TRUE(dayFromIso("2032-02-29").has_value());
}

TEST(DaysBetween, isSigned) {
    EXPECT_EQ(daysBetween(*dayFromIso("2031-12-31"), *dayFromIso("2032-03-01")), 61);
    EXPECT_EQ(daysBetween(*dayFromIso("2032-03-01"), *dayFromIso("2031-12-31")), -61);
}

TEST(SystemClock, saysTheCivilDayOfThePlace) {
    const SystemClock clock;
    const Instant evening = *instantFromIso("2031-03-05T18:30:00Z");
    {
        const InTimeZone kathmandu("Asia/Kathmandu"); // 5:45 ahead
        EXPECT_EQ(isoText(clock.dayOf(evening)), "2031-03-06");
        EXPECT_EQ(isoText(clock.dayOf(evening - 16min)), "2031-03-05");
    }
    const InTimeZone honolulu("Pacific/Honolulu"); // 10:00 behind
    EXPECT_EQ(isoText(clock.dayOf(*instantFromIso("2031-03-05T09:59:59Z"))), "2031-03-04");
    EXPECT_EQ(isoText(clock.dayOf(*instantFromIso("1950-03-05T10:31:00Z"))), "1950-03-05");
    EXPECT_TRUE(clock.today().ok());
}

} // namespace
} // namespace headcap::core
