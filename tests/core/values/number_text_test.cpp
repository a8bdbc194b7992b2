#include <limits>
#include <random>

#include <gtest/gtest.h>

#include "core/values/amount.h"
#include "core/values/amount_nearly.h"
#include "core/values/decimal.h"
#include "core/values/measure_text.h"
#include "core/values/money.h"
#include "core/values/strength.h"

namespace headcap::core {
namespace {

constexpr std::int64_t kMost = std::numeric_limits<std::int64_t>::max();
constexpr std::int64_t kLeast = std::numeric_limits<std::int64_t>::min();

TEST(Decimal, readsWhatItWrites) {
    std::mt19937_64 chance(1590);
    for (int i = 0; i < 20'000; ++i) {
        const auto count = static_cast<std::int64_t>(chance()) >> (chance() % 60);
        const int places = static_cast<int>(chance() % 13);
        if (count != kLeast) {
            ASSERT_EQ(parseDecimal(decimalText(count, places), places), count);
        }
    }
}

TEST(Decimal, readsPointAndComma) {
    EXPECT_EQ(parseDecimal("12", 3), 12'000);
    EXPECT_EQ(parseDecimal("12.5", 3), 12'500);
    EXPECT_EQ(parseDecimal("12,5", 3), 12'500);
    EXPECT_EQ(parseDecimal("-0.25", 2), -25);
    EXPECT_EQ(parseDecimal("\u22120.25", 2), -25);
    EXPECT_EQ(parseDecimal("0.2500", 2), 25);
}

TEST(Decimal, neverRoundsAndSaysWhere) {
    EXPECT_EQ(parseDecimal("12.345", 2).error().problem, TextProblem::tooFine);
    EXPECT_EQ(parseDecimal("9223372036854775807", 0), kMost);
    EXPECT_EQ(parseDecimal("9223372036854775808", 0).error().problem, TextProblem::tooLarge);
    EXPECT_EQ(parseDecimal("9223372036854775807", 1).error().problem, TextProblem::tooLarge);
    EXPECT_EQ(parseDecimal("12 mm", 2).error(), (TextError{TextProblem::trailing, 2}));
    EXPECT_EQ(parseDecimal("12.", 2).error(), (TextError{TextProblem::trailing, 2}));
    EXPECT_EQ(parseDecimal("", 2).error().problem, TextProblem::empty);
    EXPECT_EQ(parseDecimal("-", 2).error().problem, TextProblem::notANumber);
    EXPECT_EQ(decimalText(kLeast, 3), "-9223372036854775.808");
    EXPECT_EQ(decimalText(-5, 3), "-0.005");
    EXPECT_EQ(decimalText(12'500, 3), "12.5");
}

// Exact by definition: 25.4 mm to the inch (ISO 31-1, the yard agreement of 1959).
TEST(LengthText, isExact) {
    EXPECT_EQ(parseLength("1/16 in"), Length::nanometres(1'587'500));
    EXPECT_EQ(parseLength("1/64 in"), Length::nanometres(396'875));
    EXPECT_EQ(parseLength("1 1/2 in."), Length::micrometres(38'100));
    EXPECT_EQ(parseLength("1\u00BD\u2033"), Length::micrometres(38'100));
    EXPECT_EQ(parseLength("3\u2044"
                          "4 in"),
              Length::nanometres(19'050'000));
    EXPECT_EQ(parseLength("14.8 cm"), Length::millimetres(148));
    EXPECT_EQ(parseLength("12,5 mm"), Length::micrometres(12'500));
    EXPECT_EQ(parseLength("148"), Length::millimetres(148));
    EXPECT_EQ(parseLength("90 \u00B5m"), Length::micrometres(90));
    EXPECT_EQ(parseLength("1 250 mm"), Length::millimetres(1250));
    EXPECT_EQ(toText(Length::nanometres(1'587'500)), "1.5875 mm");
}

TEST(LengthText, guessesNothing) {
    EXPECT_EQ(parseLength("3/8").error().problem, TextProblem::unitMissing);
    EXPECT_EQ(parseLength("1/3 mm").error().problem, TextProblem::tooFine);
    EXPECT_EQ(parseLength("3/0 in").error().problem, TextProblem::unitUnknown);
    EXPECT_EQ(parseLength("-4 mm").error().problem, TextProblem::outOfRange);
    EXPECT_EQ(parseLength("4 parsecs").error(), (TextError{TextProblem::unitUnknown, 2}));
    EXPECT_EQ(parseLength("mm").error().problem, TextProblem::notANumber);
    EXPECT_EQ(parseLength("9999999999999 m").error().problem, TextProblem::tooLarge);
}

TEST(AmountText, readsTheUsualSpellings) {
    EXPECT_EQ(parseAmount("0.4 g"), Amount::of(Mass::milligrams(400)));
    EXPECT_EQ(parseAmount("1.5kg"), Amount::of(Mass::grams(1500)));
    EXPECT_EQ(parseAmount("5 mg"), Amount::of(Mass::milligrams(5)));
    EXPECT_EQ(parseAmount("12,5 ml"), Amount::of(Volume::microlitres(12'500)));
    EXPECT_EQ(parseAmount("2 L"), Amount::of(Volume::millilitres(2000)));
    EXPECT_EQ(parseAmount("3 cl"), Amount::of(Volume::millilitres(30)));
    EXPECT_EQ(parseAmount("7 \u03BCl"), Amount::of(Volume::microlitres(7)));
    EXPECT_EQ(parseAmount("120 mm2"), Amount::of(Area::squareMillimetres(120)));
    EXPECT_EQ(parseAmount("1 cm\u00B2"), Amount::of(Area::squareMillimetres(100)));
    EXPECT_EQ(parseAmount("0.5 m\u00B2"), Amount::of(Area::squareMillimetres(500'000)));
    EXPECT_EQ(parseAmount("35 cm"), Amount::of(Length::millimetres(350)));
    EXPECT_EQ(parseAmount("1 in"), Amount::of(Length::nanometres(25'400'000)));
    EXPECT_EQ(parseAmount("\u00BD sheet"), (Amount{500, Unit::sheet}));
    EXPECT_EQ(parseAmount("3 pcs."), Amount::pieces(3));
    EXPECT_EQ(parseAmount("10").error(), (TextError{TextProblem::unitMissing, 2}));
    EXPECT_EQ(parseAmount("1/3 sheet").error().problem, TextProblem::tooFine);
    EXPECT_EQ(parseAmount("3 drops").error().problem, TextProblem::unitUnknown);
}

TEST(AmountText, aShareOfASheetIsTakenToTheNearestThousandthWhereThatIsAsked) {
    EXPECT_EQ(parseAmountNearly("1/3 sheet"), (Amount{333, Unit::sheet}));
    EXPECT_EQ(parseAmountNearly("2/3 sheet"), (Amount{667, Unit::sheet}));
    EXPECT_EQ(parseAmountNearly("1 1/3 skins"), (Amount{1'333, Unit::piece}));
    EXPECT_EQ(parseAmountNearly("0.25 skin"), (Amount{250, Unit::piece}));
    EXPECT_EQ(parseAmountNearly("12 sh."), Amount::sheets(12));
    EXPECT_EQ(parseAmountNearly("1/3 \u00B5g").error().problem, TextProblem::tooFine);
    EXPECT_EQ(parseAmountNearly("1/9000 sheet").error().problem, TextProblem::tooFine);
    EXPECT_EQ(parseAmountNearly("0.3333 sheets").error().problem, TextProblem::tooFine);
}

TEST(AmountText, readsWhatItWrites) {
    std::mt19937_64 chance(1702);
    for (int i = 0; i < 6'000; ++i) {
        const auto count = static_cast<std::int64_t>(chance()) >> (1 + chance() % 60);
        const Amount amount{count, static_cast<Unit>(chance() % 6)};
        ASSERT_EQ(parseAmount(toText(amount)), amount) << toText(amount);
    }
    EXPECT_EQ(toText(Amount::sheets(1)), "1 sheet");
    EXPECT_EQ(toText(Amount::sheets(2)), "2 sheets");
    EXPECT_EQ(toText(Amount::of(Area::squareMillimetres(1250))), "1250 mm\u00B2");
    EXPECT_EQ(toText(Amount::of(Area::squareMillimetres(14'250))), "142.5 cm\u00B2");
    EXPECT_EQ(toText(Amount::of(Area::squareMillimetres(-1'420'001))), "-1.420001 m\u00B2");
}

TEST(AmountSum, isOfOneUnitAndNeverWraps) {
    EXPECT_EQ(sum(Amount::sheets(2), Amount::sheets(3)), Amount::sheets(5));
    EXPECT_FALSE(sum(Amount::sheets(2), Amount::pieces(3)).has_value());
    EXPECT_FALSE(sum(Amount{kMost, Unit::gram}, Amount{1, Unit::gram}).has_value());
}

TEST(MoneyText, readsWhatPeopleWrite) {
    const Money price{125'050, "EUR"};
    for (const char* text :
         {"1250.50", "1 250.50", "1250,5", "1,250.50", "1.250,50", "\u20AC1250.50",
          "1250.50 \u20AC", "EUR 1250.5", "1250.50 eur", "1\u00A0250,50"}) {
        EXPECT_EQ(parseMoney(text, "EUR"), price) << text;
    }
    EXPECT_EQ(parseMoney("USD 20", "EUR"), (Money{2'000, "USD"}));
    EXPECT_EQ(parseMoney("\u00A320", "EUR"), (Money{2'000, "GBP"}));
    EXPECT_EQ(parseMoney("$20", "USD"), (Money{2'000, "USD"}));
    EXPECT_EQ(parseMoney("1,250", "JPY"), (Money{1'250, "JPY"}));
    EXPECT_EQ(parseMoney("1,250,000", "EUR"), (Money{125'000'000, "EUR"}));
    EXPECT_EQ(parseMoney("-12", "EUR"), (Money{-1'200, "EUR"}));
}

TEST(MoneyText, refusesWhatCouldBeTwoSums) {
    EXPECT_EQ(parseMoney("1,250", "EUR").error().problem, TextProblem::malformed);
    EXPECT_EQ(parseMoney("0.001", "EUR").error().problem, TextProblem::tooFine);
    EXPECT_EQ(parseMoney("1.5", "JPY").error().problem, TextProblem::tooFine);
    EXPECT_EQ(parseMoney("$20", "EUR").error().problem, TextProblem::notANumber);
    EXPECT_EQ(parseMoney("20", "XQQ").error().problem, TextProblem::unitUnknown);
    EXPECT_EQ(parseMoney("3 4", "EUR").error(), (TextError{TextProblem::trailing, 1}));
    EXPECT_EQ(parseMoney("EUR 3 EUR", "EUR").error().problem, TextProblem::trailing);
    EXPECT_EQ(parseMoney("", "EUR").error().problem, TextProblem::empty);
    EXPECT_EQ(parseMoney("nothing", "EUR").error().problem, TextProblem::notANumber);
    for (const char* odd : {"..5", "1,25.00", "1,2,3", ",", "1.250,50,00"}) {
        EXPECT_FALSE(parseMoney(odd, "EUR").has_value()) << odd;
    }
}

TEST(MoneyText, readsWhatItWrites) {
    std::mt19937_64 chance(1741);
    for (const char* currency : {"EUR", "JPY", "KWD"}) {
        for (int i = 0; i < 3'000; ++i) {
            const Money money{static_cast<std::int64_t>(chance()) >> (1 + chance() % 60), currency};
            ASSERT_EQ(parseMoney(toText(money), currency), money) << toText(money);
        }
    }
    EXPECT_EQ(toText(Money{125'050, "EUR"}), "1,250.50 EUR");
    EXPECT_EQ(toText(Money{100, "EUR"}), "1.00 EUR");
    EXPECT_EQ(toText(Money{99'999, "EUR"}), "999.99 EUR");
    EXPECT_EQ(toText(Money{-123'456'789, "EUR"}), "-1,234,567.89 EUR");
    EXPECT_EQ(toText(Money{-5, "EUR"}), "-0.05 EUR");
    EXPECT_EQ(toText(Money{1'250, "JPY"}), "1,250 JPY");
}

TEST(MoneySum, isOfOneCurrency) {
    EXPECT_EQ(sum(Money{1, "EUR"}, Money{2, "EUR"}), (Money{3, "EUR"}));
    EXPECT_FALSE(sum(Money{1, "EUR"}, Money{2, "USD"}).has_value());
    EXPECT_FALSE(sum(Money{kMost, "EUR"}, Money{1, "EUR"}).has_value());
}

TEST(StrengthText, needsItsBasis) {
    EXPECT_EQ(parseStrength("2 % w/v"), (Strength{20'000, StrengthBasis::weightInVolume}));
    EXPECT_EQ(parseStrength("2.5% w/w"), (Strength{25'000, StrengthBasis::weightInWeight}));
    EXPECT_EQ(parseStrength("70 % (v/v)"), (Strength{700'000, StrengthBasis::volumeInVolume}));
    EXPECT_EQ(parseStrength("20 g/l"), (Strength{20'000, StrengthBasis::weightInVolume}));
    EXPECT_EQ(parseStrength("2 g / 100 ml"), (Strength{20'000, StrengthBasis::weightInVolume}));
    EXPECT_EQ(parseStrength("2 %").error(), (TextError{TextProblem::unitMissing, 3}));
    EXPECT_EQ(parseStrength("2 % x/y").error().problem, TextProblem::unitUnknown);
    EXPECT_EQ(parseStrength("1 : 4").error().problem, TextProblem::unitUnknown);
    EXPECT_EQ(parseStrength("120 % w/w").error().problem, TextProblem::outOfRange);
    EXPECT_EQ(parseStrength("-1 % w/v").error().problem, TextProblem::outOfRange);
    EXPECT_EQ(parseStrength("0.00001 % w/v").error().problem, TextProblem::tooFine);
}

TEST(StrengthText, readsWhatItWrites) {
    for (std::int64_t parts = 0; parts <= 1'000'000; parts += 777) {
        for (const auto basis : {StrengthBasis::weightInVolume, StrengthBasis::weightInWeight,
                                 StrengthBasis::volumeInVolume}) {
            const Strength strength{parts, basis};
            ASSERT_EQ(parseStrength(toText(strength)), strength) << toText(strength);
        }
    }
    EXPECT_EQ(toText(Strength{20'000, StrengthBasis::weightInVolume}), "2 % w/v");
}

} // namespace
} // namespace headcap::core
