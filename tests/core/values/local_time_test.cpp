#include "core/values/local_time.h"

#include <memory>

#include <gtest/gtest.h>
#include <unicode/basictz.h>

#include "tests/support/in_time_zone.h"

namespace headcap::core {
namespace {

using namespace std::chrono_literals;
using std::chrono::days;
using std::chrono::sys_days;
using tests::InTimeZone;

Instant utc(const char* text) {
    return *instantFromIso(text);
}

Day dayOn(const char* text) {
    return *dayFromIso(text);
}

Instant here(const char* day, Minutes sinceMidnight) {
    return momentAt(dayOn(day), sinceMidnight, systemUtcOffset);
}

// The worked examples of RFC 5545, section 3.3.5, form 3: 1:30 of 4 November 2007 in New York is
// that of EDT; 2:30 of 11 March 2007 is 3:30 EDT, one hour after 1:30 EST.
TEST(LocalTime, readsTheHourThatComesTwiceAndTheOneThatDoesNotAsTheStandardDoes) {
    const InTimeZone newYork("America/New_York");
    EXPECT_EQ(here("2007-11-04", 1h + 30min), utc("2007-11-04T05:30:00Z"));
    EXPECT_EQ(here("2007-11-04", 2h), utc("2007-11-04T07:00:00Z"));
    EXPECT_EQ(here("2007-03-11", 1h + 30min), utc("2007-03-11T06:30:00Z"));
    EXPECT_EQ(here("2007-03-11", 2h + 30min), utc("2007-03-11T07:30:00Z"));
    EXPECT_EQ(timeOfDay(utc("2007-03-11T07:30:00Z"), systemUtcOffset), 3h + 30min);
    EXPECT_EQ(here("2007-03-11", 3h), utc("2007-03-11T07:00:00Z"));
}

// Of the tz database: Samoa had no 30 December 2011 (10 hours behind, then 14 ahead); Lord Howe
// moves by half an hour; Kathmandu is 5:45 ahead.
TEST(LocalTime, knowsZonesThatChangeByMoreOrLessThanAnHour) {
    {
        const InTimeZone apia("Pacific/Apia");
        EXPECT_EQ(here("2011-12-29", 23h), utc("2011-12-30T09:00:00Z"));
        EXPECT_EQ(here("2011-12-31", 0h), utc("2011-12-30T10:00:00Z"));
        EXPECT_EQ(here("2011-12-30", 12h), utc("2011-12-30T22:00:00Z"));
    }
    {
        const InTimeZone lordHowe("Australia/Lord_Howe");
        EXPECT_EQ(here("2019-04-07", 1h + 45min), utc("2019-04-06T14:45:00Z"));
        EXPECT_EQ(here("2019-10-06", 2h + 15min), utc("2019-10-05T15:45:00Z"));
    }
    const InTimeZone kathmandu("Asia/Kathmandu");
    EXPECT_EQ(here("2031-03-05", 9h), utc("2031-03-05T03:15:00Z"));
}

// Local times of two years, each quarter of an hour, against ICU, which has tables and code of its
// own: "former" is the offset before the change, in the gap as in the overlap.
TEST(LocalTime, meansWhatIcuMeans) {
    for (const char* name : {"Europe/London", "America/New_York", "America/St_Johns",
                             "Australia/Lord_Howe", "Africa/Casablanca", "Asia/Kathmandu"}) {
        const InTimeZone zone(name);
        const std::unique_ptr<icu::TimeZone> made{icu::TimeZone::createTimeZone(name)};
        const auto* known = dynamic_cast<const icu::BasicTimeZone*>(made.get());
        ASSERT_NE(known, nullptr) << name;
        const sys_days first{dayOn("2018-01-01")};
        for (auto local = Instant{first}; local < first + days{730}; local += 15min) {
            std::int32_t raw = 0;
            std::int32_t saving = 0;
            UErrorCode status = U_ZERO_ERROR;
            known->getOffsetFromLocal(static_cast<UDate>(local.time_since_epoch().count()),
                                      UCAL_TZ_LOCAL_FORMER, UCAL_TZ_LOCAL_FORMER, raw, saving,
                                      status);
            ASSERT_TRUE(U_SUCCESS(status));
            const auto midnight = std::chrono::floor<days>(local);
            const Instant moment = momentAt(
                Day{midnight}, std::chrono::floor<Minutes>(local - midnight), systemUtcOffset);
            ASSERT_EQ(isoText(moment), isoText(local - std::chrono::milliseconds{raw + saving}))
                << name << ", local " << isoText(local);
        }
    }
}

// What the clock shows at a moment means that moment, or an earlier one at which it showed the
// same.
TEST(LocalTime, readsBackWhatTheClockShows) {
    const SystemClock clock;
    for (const char* name : {"Europe/Dublin", "America/Santiago", "Pacific/Chatham"}) {
        const InTimeZone zone(name);
        for (auto at = utc("2024-01-01T00:00:00Z"); at < utc("2025-01-01T00:00:00Z"); at += 20min) {
            const Minutes shown = timeOfDay(at, systemUtcOffset);
            const Instant read = momentAt(clock.dayOf(at), shown, systemUtcOffset);
            ASSERT_LE(read, at) << name;
            ASSERT_TRUE(at - read < 1min || at - read == 1h) << name << ' ' << isoText(at);
            ASSERT_EQ(timeOfDay(read, systemUtcOffset), shown) << name;
            ASSERT_EQ(clock.dayOf(read), clock.dayOf(at)) << name;
        }
    }
}

} // namespace
} // namespace headcap::core
