#include "core/materials/strengths.h"

#include <random>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

using Basis = StrengthBasis;
using Problem = StrengthProblem;

Amount ml(std::int64_t microlitres) {
    return Amount::of(Volume::microlitres(microlitres));
}
Amount g(std::int64_t micrograms) {
    return Amount::of(Mass::micrograms(micrograms));
}
Strength percent(std::int64_t hundredths, Basis basis = Basis::weightInVolume) {
    return {hundredths * 100, basis};
}

struct Task {
    const char* source;
    Strength stock;
    Strength wanted;
    Amount total;
    Dilution expected;
};

class DilutionTask : public testing::TestWithParam<Task> {};

TEST_P(DilutionTask, comesOut) {
    const Task& task = GetParam();
    EXPECT_EQ(diluted(task.stock, task.wanted, task.total, {}), task.expected) << task.source;
}

INSTANTIATE_TEST_SUITE_P(Worked, DilutionTask,
                         testing::Values(Task{"published task: 50 % to 20 ml of 10 %",
                                              percent(5'000),
                                              percent(1'000),
                                              ml(20'000),
                                              {ml(4'000), ml(16'000)}},
                                         Task{"published task: 5 % to 400 ml of 2 %",
                                              percent(500),
                                              percent(200),
                                              ml(400'000),
                                              {ml(160'000), ml(240'000)}},
                                         // The published page rounds to 8.5 and 91.5 ml.
                                         Task{"computed: 35 % to 100 ml of 3 %",
                                              percent(3'500),
                                              percent(300),
                                              ml(100'000),
                                              {ml(8'571), ml(91'429)}},
                                         Task{"computed: 20 % w/w to 50 g of 5 % w/w",
                                              percent(2'000, Basis::weightInWeight),
                                              percent(500, Basis::weightInWeight),
                                              g(50'000'000),
                                              {g(12'500'000), g(37'500'000)}}));

// Computed.
TEST(Strengths, twoPerCentIsFiveGramsInAQuarterLitre) {
    EXPECT_EQ(soluteIn(ml(250'000), percent(200)), g(5'000'000));
}

// The Library of Congress recipe for paste, both ways of saying it; computed. The weight is to the
// nearest millionth of the strength.
TEST(Strengths, pasteHasTwoStrengths) {
    EXPECT_EQ(soluteIn(ml(400'000), {142'500, Basis::weightInVolume}), g(57'000'000));
    const auto byWhole = soluteIn(g(400'000'000), {124'726, Basis::weightInWeight}); // 57 / 457
    ASSERT_TRUE(byWhole);
    EXPECT_NEAR(static_cast<double>(byWhole->count), 57e6, 300);
}

// "1 : 4" by the Library of Congress recipe and by weight (TRADE B): a ratio needs its basis.
TEST(Strengths, oneToFourIsTwentyPerCentByWeightOfTheWhole) {
    EXPECT_EQ(soluteIn(g(4'000'000), {200'000, Basis::weightInWeight}), g(1'000'000));
}

TEST(Strengths, aChangeOfBasisAsksForTheDensity) {
    const Strength byVolume = percent(200);
    EXPECT_EQ(inBasis(byVolume, Basis::weightInWeight, {}),
              tl::unexpected(Problem::densityUnknown));
    EXPECT_EQ(inBasis(byVolume, Basis::weightInWeight, {.solution = 789}),
              (Strength{25'349, Basis::weightInWeight})); // 2 / 0.789
    EXPECT_EQ(
        inBasis(percent(1'000, Basis::volumeInVolume), Basis::weightInVolume, {.solute = 789}),
        (Strength{78'900, Basis::weightInVolume}));
    EXPECT_EQ(diluted(percent(500, Basis::weightInWeight), percent(200), ml(400'000), {}),
              tl::unexpected(Problem::densityUnknown));
}

TEST(Strengths, whatCannotBeIsRefused) {
    EXPECT_EQ(diluted(percent(200), percent(500), ml(400'000), {}),
              tl::unexpected(Problem::strongerThanStock));
    EXPECT_EQ(diluted(percent(500), percent(200), g(400'000), {}),
              tl::unexpected(Problem::otherMeasure));
    EXPECT_EQ(diluted(percent(500), percent(200), ml(0), {}), tl::unexpected(Problem::notAbove));
    EXPECT_EQ(diluted(percent(0), percent(200), ml(1), {}), tl::unexpected(Problem::notAbove));
    EXPECT_EQ(soluteIn(ml(250'000), percent(10'000, Basis::volumeInVolume)),
              tl::unexpected(Problem::beyondWhole));
    EXPECT_EQ(soluteIn(ml(INT64_MAX), percent(20'000)), tl::unexpected(Problem::tooMuch));
}

// Whatever the figures: both parts make up the total, and what the stock holds is what is wanted,
// within the last microlitre.
TEST(Strengths, aDilutionLosesNothing) {
    std::mt19937_64 chance{31};
    std::uniform_int_distribution<std::int64_t> parts{1, 1'000'000};
    std::uniform_int_distribution<std::int64_t> total{1, 5'000'000};
    for (int i = 0; i < 5'000; ++i) {
        std::int64_t stock = parts(chance);
        std::int64_t wanted = parts(chance);
        if (wanted > stock) {
            std::swap(stock, wanted);
        }
        const Amount whole = ml(total(chance));
        const auto made =
            diluted({stock, Basis::weightInVolume}, {wanted, Basis::weightInVolume}, whole, {});
        ASSERT_TRUE(made);
        EXPECT_EQ(made->stock.count + made->diluent.count, whole.count);
        EXPECT_GE(made->diluent.count, 0);
        EXPECT_LE(std::abs(made->stock.count * stock - whole.count * wanted), stock);
    }
}

// There and back between bases, within a millionth of the whole.
TEST(Strengths, basesGoThereAndBack) {
    std::mt19937_64 chance{32};
    std::uniform_int_distribution<std::int64_t> parts{1, 600'000};
    std::uniform_int_distribution<std::int64_t> density{600, 2'000};
    for (int i = 0; i < 2'000; ++i) {
        const Densities by{.solution = density(chance), .solute = std::nullopt};
        const Strength first{parts(chance), Basis::weightInWeight};
        const auto there = inBasis(first, Basis::weightInVolume, by);
        ASSERT_TRUE(there);
        const auto back = inBasis(*there, Basis::weightInWeight, by);
        ASSERT_TRUE(back);
        EXPECT_LE(std::abs(back->partsPerMillion - first.partsPerMillion), 1);
    }
}

} // namespace
} // namespace headcap::core
