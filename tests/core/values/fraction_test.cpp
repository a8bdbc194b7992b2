#include "core/values/fraction.h"

#include <random>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

constexpr std::int64_t kMost = std::numeric_limits<std::int64_t>::max();

static_assert(nearest(5, 2) == 3);
static_assert(nearest(-5, 2) == -3);
static_assert(nearest(4, 3) == 1);
static_assert(nearest(-4, 3) == -1);
static_assert(nearest(1, 2) == 1 && nearest(1, 3) == 0);
static_assert(nearest(0, 7) == 0);

TEST(Wide, whatIsBeyondCountingIsTheMost) {
    EXPECT_EQ(clampedCount(static_cast<Wide>(kMost) + 1), kMost);
    EXPECT_EQ(clampedCount(-static_cast<Wide>(kMost) - 5), -kMost);
    EXPECT_EQ(clampedCount(-7), -7);
}

TEST(Fraction, roundsOnceAndHalfAwayFromNothing) {
    EXPECT_EQ(Fraction(15, 100).of(50), 8); // 7.5
    EXPECT_EQ(Fraction(-15, 100).of(50), -8);
    EXPECT_EQ(Fraction(1, 3).of(1), 0);
    EXPECT_EQ(Fraction(1, 3).times(1, 3).times(9, 1).of(5), 5);
    EXPECT_EQ(Fraction(1, 3).plus({1, 6}).of(3), 2); // 1.5
    EXPECT_EQ(Fraction().plus({7, 2}).of(2), 7);
    EXPECT_EQ(Fraction(kMost, 1).of(2), kMost);
}

// By whole numbers of their own: the parts of a sum of unlike shares, over their common measure.
TEST(Fraction, isExactInWhatAWorkshopCounts) {
    std::mt19937_64 chance{11};
    const auto upTo = [&](std::int64_t most) {
        return static_cast<std::int64_t>(chance() % static_cast<std::uint64_t>(most)) + 1;
    };
    for (int i = 0; i < 20'000; ++i) {
        const std::int64_t a = upTo(100'000);
        const std::int64_t b = upTo(100'000'000);
        const std::int64_t c = upTo(100'000);
        const std::int64_t d = upTo(100'000);
        const std::int64_t count = upTo(1'000'000);
        const Wide above = (static_cast<Wide>(a) * d + static_cast<Wide>(c) * b) * count;
        ASSERT_EQ(Fraction(a, b).plus({c, d}).of(count),
                  static_cast<std::int64_t>(nearest(above, static_cast<Wide>(b) * d)));
        ASSERT_EQ(Fraction(a, b).of(b), a);
    }
}

// Deep mixes outgrow exact terms: what comes out is still right to far below a minor unit.
TEST(Fraction, staysNearWhereItsTermsOutgrowCounting) {
    Fraction there{1, 1};
    for (const std::int64_t prime : {999'983, 999'979, 999'961, 999'959, 999'953}) {
        there = there.times(prime, prime + 4);
    }
    // 1 - 4 · Σ 1/prime and less than 1e-10 besides, of ten thousand million.
    EXPECT_NEAR(static_cast<double>(there.of(10'000'000'000)), 9'999'800'005.0, 5'000.0);
    for (const std::int64_t prime : {999'953, 999'959, 999'961, 999'979, 999'983}) {
        there = there.times(prime + 4, prime);
    }
    EXPECT_EQ(there.of(1'000'000'000'000), 1'000'000'000'000);
}

} // namespace
} // namespace headcap::core
