#include "core/values/spoken_time.h"

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

using std::chrono::day;
using std::chrono::month;
using std::chrono::year;

// A Thursday (ISO 8601 calendar).
constexpr Day kToday = year{2031} / month{3} / day{6};

struct Said {
    const char* text;
    Day means;
};

class SpokenDay : public testing::TestWithParam<Said> {};

TEST_P(SpokenDay, isUnderstood) {
    const auto read = parseDay(GetParam().text, kToday);
    ASSERT_TRUE(read.has_value()) << GetParam().text;
    EXPECT_EQ(*read, GetParam().means) << GetParam().text << " is " << isoText(*read);
}

INSTANTIATE_TEST_SUITE_P(
    Ways, SpokenDay,
    testing::Values(Said{"14 March 2031", year{2031} / 3 / 14}, Said{"14 mar", year{2031} / 3 / 14},
                    Said{"March 14, 2032", year{2032} / 3 / 14},
                    Said{"2031-03-14", year{2031} / 3 / 14}, Said{"14.3.2031", year{2031} / 3 / 14},
                    Said{"14/3/31", year{2031} / 3 / 14}, Said{"14.3.", year{2031} / 3 / 14},
                    Said{"the 1st of May", year{2031} / 5 / 1},
                    Said{"Thursday 6 March", year{2031} / 3 / 6},
                    // Without a year: the nearest one.
                    Said{"20 December", year{2030} / 12 / 20}, Said{"today", kToday},
                    Said{"Tomorrow", year{2031} / 3 / 7}, Said{"yesterday", year{2031} / 3 / 5},
                    Said{"fri", year{2031} / 3 / 7}, Said{"thursday", kToday},
                    Said{"in 2 weeks", year{2031} / 3 / 20}, Said{"3 days ago", year{2031} / 3 / 3},
                    Said{"in 2 years", year{2033} / 3 / 6}));

struct Unsaid {
    const char* text;
    TextProblem problem;
};

class NoDay : public testing::TestWithParam<Unsaid> {};

TEST_P(NoDay, saysWhy) {
    const auto read = parseDay(GetParam().text, kToday);
    ASSERT_FALSE(read.has_value()) << GetParam().text;
    EXPECT_EQ(read.error().problem, GetParam().problem) << GetParam().text;
}

INSTANTIATE_TEST_SUITE_P(Ways, NoDay,
                         testing::Values(Unsaid{"", TextProblem::empty},
                                         Unsaid{"31 April 2031", TextProblem::outOfRange},
                                         Unsaid{"29 Feb 2031", TextProblem::outOfRange},
                                         Unsaid{"14.13.2031", TextProblem::outOfRange},
                                         Unsaid{"soon", TextProblem::malformed},
                                         Unsaid{"in 2 moons", TextProblem::unitUnknown},
                                         Unsaid{"14 March 2031 9", TextProblem::trailing}));

TEST(SpokenDay, everyDayReadsBackFromItsOwnText) {
    for (int n = 0; n < 800; ++n) {
        const Day shown{std::chrono::sys_days{kToday} + std::chrono::days{n - 400}};
        EXPECT_EQ(parseDay(toText(shown), kToday), shown) << toText(shown);
        EXPECT_EQ(parseDay(isoText(shown), kToday), shown) << isoText(shown);
    }
}

TEST(SpokenDay, theEndOfAMonthMovesToTheEndOfAShorterOne) {
    EXPECT_EQ(parseDay("in 1 month", year{2031} / 1 / 31), Day{year{2031} / 2 / 28});
}

TEST(SpokenMinutes, areUnderstood) {
    EXPECT_EQ(parseMinutes("45"), Minutes{45});
    EXPECT_EQ(parseMinutes("45 min"), Minutes{45});
    EXPECT_EQ(parseMinutes("1 h 20"), Minutes{80});
    EXPECT_EQ(parseMinutes("1h20m"), Minutes{80});
    EXPECT_EQ(parseMinutes("1:20"), Minutes{80});
    EXPECT_EQ(parseMinutes("2 hours"), Minutes{120});
    EXPECT_FALSE(parseMinutes("1:75").has_value());
    EXPECT_FALSE(parseMinutes("20 30").has_value());
    EXPECT_FALSE(parseMinutes("3 pots").has_value());
    EXPECT_FALSE(parseMinutes("").has_value());
}

TEST(SpokenMinutes, everySpanReadsBackFromItsOwnText) {
    for (int n = 0; n < 1000; ++n) {
        EXPECT_EQ(parseMinutes(toText(Minutes{n})), Minutes{n}) << toText(Minutes{n});
    }
}

} // namespace
} // namespace headcap::core
