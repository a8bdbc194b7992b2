#include "core/materials/conversion.h"

#include <random>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

using Problem = ConversionProblem;

LotMeasures sheets(std::int64_t widthMm, std::int64_t heightMm, std::int64_t gramsPerSquareMetre) {
    return {.sheetWidth = Length::millimetres(widthMm),
            .sheetHeight = Length::millimetres(heightMm),
            .grammageMgM2 = gramsPerSquareMetre * 1'000};
}

Amount grams(std::int64_t milligrams) {
    return Amount::of(Mass::milligrams(milligrams));
}

// ISO 216: A4 is 210 × 297 mm; weight is area by weight of a square metre.
TEST(Conversion, anA4SheetOf80GramsWeighs4Point99Grams) {
    EXPECT_EQ(converted(Amount::sheets(1), Unit::gram, sheets(210, 297, 80)),
              Amount::of(Mass::micrograms(4'989'600)));
}

TEST(Conversion, aLeafOf250By175At120GramsWeighs5Point25Grams) {
    EXPECT_EQ(converted(Amount::of(Area::squareMillimetres(250 * 175)), Unit::gram,
                        sheets(640, 900, 120)),
              grams(5'250));
}

TEST(Conversion, aPieceIsAShareOfItsSheet) {
    EXPECT_EQ(converted(Amount::of(Area::squareMillimetres(320 * 450)), Unit::sheet,
                        sheets(640, 900, 100)),
              (Amount{250, Unit::sheet}));
}

TEST(Conversion, whatTheLotDoesNotSayIsNotGuessed) {
    EXPECT_EQ(converted(Amount::sheets(1), Unit::gram, sheets(210, 297, 0)),
              tl::unexpected(Problem::weightUnknown));
    EXPECT_EQ(converted(grams(5), Unit::sheet, {.grammageMgM2 = 80'000}),
              tl::unexpected(Problem::sheetSizeUnknown));
    EXPECT_EQ(converted(Amount::sheets(1), Unit::squareMillimetre, {}),
              tl::unexpected(Problem::sheetSizeUnknown));
}

TEST(Conversion, metresPiecesAndMillilitresAreNothingElse) {
    const LotMeasures lot = sheets(640, 900, 100);
    for (const Unit unit : {Unit::metre, Unit::piece, Unit::millilitre}) {
        for (const Unit other : {Unit::gram, Unit::sheet, Unit::squareMillimetre}) {
            EXPECT_EQ(converted({5'000, unit}, other, lot), tl::unexpected(Problem::otherKind));
            EXPECT_EQ(converted({5'000, other}, unit, lot), tl::unexpected(Problem::otherKind));
        }
        EXPECT_EQ(converted({5'000, unit}, unit, lot), (Amount{5'000, unit}));
    }
}

TEST(Conversion, whatComesToNothingIsRefused) {
    EXPECT_EQ(
        converted(Amount::of(Area::squareMillimetres(100)), Unit::sheet, sheets(640, 900, 100)),
        tl::unexpected(Problem::tooLittle));
    EXPECT_EQ(converted({INT64_MAX, Unit::sheet}, Unit::squareMillimetre, sheets(640, 900, 100)),
              tl::unexpected(Problem::tooMuch));
}

// A sheet goes to its area or weight and comes back; nothing gets lost that the unit can hold.
TEST(Conversion, goesThereAndBack) {
    std::mt19937_64 chance{6};
    std::uniform_int_distribution<std::int64_t> size{50, 2'000};
    std::uniform_int_distribution<std::int64_t> weight{2, 2'000};
    std::uniform_int_distribution<std::int64_t> thousandths{-5'000'000, 5'000'000};
    for (int i = 0; i < 2'000; ++i) {
        const LotMeasures lot = sheets(size(chance), size(chance), weight(chance));
        const Amount amount{thousandths(chance), Unit::sheet};
        for (const Unit unit : {Unit::gram, Unit::squareMillimetre}) {
            const auto there = converted(amount, unit, lot);
            ASSERT_TRUE(there);
            EXPECT_EQ(converted(*there, Unit::sheet, lot), amount);
            EXPECT_EQ(converted(amount.negated(), unit, lot), there->negated());
        }
        const auto byArea =
            converted(*converted(amount, Unit::squareMillimetre, lot), Unit::gram, lot);
        EXPECT_EQ(byArea, converted(amount, Unit::gram, lot));
    }
}

} // namespace
} // namespace headcap::core
