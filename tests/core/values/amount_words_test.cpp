#include "core/values/amount_words.h"

#include <random>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

constexpr Amount thousandths(std::int64_t count, Unit unit = Unit::sheet) {
    return {count, unit};
}

TEST(AmountWords, sayWhatABinderSays) {
    EXPECT_EQ(amountWords(Amount::of(Volume::millilitres(9'000))), "9 l");
    EXPECT_EQ(amountWords(Amount::of(Volume::millilitres(1'250))), "1.25 l");
    EXPECT_EQ(amountWords(Amount::of(Volume::millilitres(999))), "999 ml");
    EXPECT_EQ(amountWords(Amount::of(Mass::grams(1'200))), "1.2 kg");
    EXPECT_EQ(amountWords(Amount::of(Mass::grams(46))), "46 g");
    EXPECT_EQ(amountWords({240'000'000, Unit::metre}), "24 cm");
    EXPECT_EQ(amountWords({3'600'000'000, Unit::metre}), "3.6 m");
    EXPECT_EQ(amountWords(thousandths(500)), "half a sheet");
    EXPECT_EQ(amountWords(thousandths(100)), "a tenth of a sheet");
    EXPECT_EQ(amountWords(thousandths(750)), "three quarters of a sheet");
    EXPECT_EQ(amountWords(thousandths(1'000)), "1 sheet");
    EXPECT_EQ(amountWords(thousandths(2'500)), "2½ sheets");
    EXPECT_EQ(amountWords(thousandths(3'300)), "3.3 sheets");
    EXPECT_EQ(amountWords(thousandths(20, Unit::piece), "skin"), "0.02 of a skin");
    EXPECT_EQ(amountWords(thousandths(300, Unit::piece)), "0.3 of a piece");
    EXPECT_EQ(amountWords(thousandths(12'000)), "12 sheets");
    EXPECT_EQ(amountWords(thousandths(0)), "0 sheets");
    EXPECT_EQ(amountWords(thousandths(-500)), "-0.5 sheets");
}

TEST(AmountWords, tellWhatIsLeftToTheQuarter) {
    EXPECT_EQ(aboutWords(thousandths(117'750)), "117¾ sheets");
    EXPECT_EQ(aboutWords(thousandths(36'260)), "about 36¼ sheets");
    EXPECT_EQ(aboutWords(thousandths(11'900)), "about 12 sheets");
    EXPECT_EQ(aboutWords(thousandths(1'060)), "about 1 sheet");
    EXPECT_EQ(aboutWords(thousandths(2'250, Unit::piece), "skin"), "2¼ skins");
    EXPECT_EQ(aboutWords(thousandths(20, Unit::piece), "skin"), "0.02 of a skin");
    EXPECT_EQ(aboutWords(Amount::of(Mass::grams(436))), "436 g");
}

// Whatever is written without a fraction's words is read again as the same amount.
TEST(AmountWords, roundNothing) {
    std::mt19937_64 chance(1723);
    for (int i = 0; i < 20'000; ++i) {
        const auto unit = static_cast<Unit>(chance() % 6);
        const Amount amount{static_cast<std::int64_t>(chance() >> (chance() % 50 + 8)), unit};
        const std::string words = amountWords(amount);
        // A third is kept as 0.333, and read again only in words.
        const bool isInWords =
            words.find("of a") != std::string::npos || words.find("half a") != std::string::npos ||
            words.find("⅓") != std::string::npos || words.find("⅔") != std::string::npos;
        if (!isInWords) {
            ASSERT_EQ(parseAmount(words), amount) << words;
        }
    }
}

// Never off by more than an eighth, and "about" wherever it is off.
TEST(AmountWords, aboutIsSaidWhereItIsMeant) {
    for (std::int64_t count = 1'000; count < 40'000; ++count) {
        const std::string words = aboutWords(thousandths(count));
        const bool isAbout = words.starts_with("about ");
        const auto read = parseAmount(isAbout ? words.substr(6) : words);
        ASSERT_TRUE(read) << words;
        ASSERT_EQ(isAbout, read->count != count) << count;
        ASSERT_LE(std::abs(read->count - count), 125) << words;
    }
}

} // namespace
} // namespace headcap::core
