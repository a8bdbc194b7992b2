#include "core/values/length_words.h"

#include <gtest/gtest.h>

#include "core/values/measure_text.h"

namespace headcap::core {
namespace {

// 25.4 mm to the inch, exact (the international yard of 1959).
TEST(LengthWords, whatAnInchRuleGaveIsSaidInInches) {
    struct Said {
        const char* typed;
        const char* shown;
    };
    for (const auto& [typed, shown] :
         {Said{"8 1/4 in", "8 1/4 in"}, Said{"5 1/2 in", "5 1/2 in"}, Said{"1 3/8 in", "1 3/8 in"},
          Said{"3/8 in", "3/8 in"}, Said{"9 in", "9 in"}, Said{"4 6/8 in", "4 3/4 in"},
          Said{"2 1/2 in", "63.5 mm"}, Said{"148 mm", "148 mm"}, Said{"27.25 mm", "27.25 mm"},
          Said{"0.05 mm", "0.05 mm"}, Said{"1/32 in", "0.79375 mm"}, Said{"0", "0 mm"}}) {
        EXPECT_EQ(asMeasured(*parseLength(typed)), shown) << typed;
    }
}

TEST(LengthWords, readsBackAsTheSameLength) {
    for (std::int64_t sixteenths = 0; sixteenths < 16 * 40; ++sixteenths) {
        const Length length = Length::nanometres(sixteenths * 1'587'500);
        EXPECT_EQ(parseLength(asMeasured(length)), length) << sixteenths;
    }
    for (std::int64_t tenths = 0; tenths < 6'000; ++tenths) {
        const Length length = Length::micrometres(tenths * 100);
        EXPECT_EQ(parseLength(asMeasured(length)), length) << tenths;
    }
}

TEST(LengthWords, isWithinAQuarterOfAMillimetreOfWhatWasMeasured) {
    EXPECT_EQ(toText(toHalfMillimetre(*parseLength("8 1/4 in"))), "209.5 mm");
    EXPECT_EQ(toText(toHalfMillimetre(*parseLength("1 3/8 in"))), "35 mm");
    for (std::int64_t micrometres = 0; micrometres < 2'000; ++micrometres) {
        const Length length = Length::micrometres(micrometres);
        const Length half = toHalfMillimetre(length);
        EXPECT_EQ(half.count() % 500'000, 0);
        EXPECT_LE(std::abs(half.count() - length.count()), 250'000) << micrometres;
    }
}

} // namespace
} // namespace headcap::core
