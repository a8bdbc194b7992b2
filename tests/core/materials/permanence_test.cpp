#include "core/materials/permanence.h"

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

using Fault = PermanenceFault;

// ASTM D4988: 2 % calcium carbonate neutralises 0.4 mol of acid a kilogram (M 100.087).
TEST(AlkaliReserve, twoPerCentIsFourTenthsOfAMole) {
    const auto reserve = alkaliReserve({.paper = Mass::grams(1),
                                        .acid = Volume::microlitres(20'000),
                                        .alkali = Volume::microlitres(16'000)});
    ASSERT_TRUE(reserve);
    EXPECT_EQ(reserve->mmolKg, 400);
    EXPECT_EQ(reserve->carbonatePpm, 20'017);
}

// Computed: 1.000 g, 20.00 ml 0.1 N acid, 15.50 ml 0.1 N alkali.
TEST(AlkaliReserve, isWhatTheAlkaliDidNotFind) {
    const auto reserve = alkaliReserve({.paper = Mass::grams(1),
                                        .acid = Volume::microlitres(20'000),
                                        .alkali = Volume::microlitres(15'500)});
    ASSERT_TRUE(reserve);
    EXPECT_EQ(reserve->mmolKg, 450);
    EXPECT_EQ(reserve->carbonatePpm, 22'520); // 2.252 %
    EXPECT_FALSE(reserve->isNearMethodsLimit);
}

TEST(AlkaliReserve, saysWhereTheMethodIsAtItsLimit) {
    const auto reserve = alkaliReserve({.paper = Mass::grams(1),
                                        .acid = Volume::microlitres(20'000),
                                        .alkali = Volume::microlitres(16'100)});
    EXPECT_EQ(reserve->mmolKg, 390);
    EXPECT_TRUE(reserve->isNearMethodsLimit);
}

TEST(AlkaliReserve, refusesWhatCannotBe) {
    using Problem = TitrationProblem;
    EXPECT_EQ(alkaliReserve({.paper = Mass::grams(1),
                             .acid = Volume::microlitres(20'000),
                             .alkali = Volume::microlitres(20'100)})
                  .error(),
              Problem::moreAlkaliThanAcid);
    EXPECT_EQ(alkaliReserve({}).error(), Problem::notAbove);
    EXPECT_EQ(alkaliReserve({.paper = Mass::micrograms(1),
                             .acid = Volume::microlitres(INT64_MAX),
                             .alkali = Volume::microlitres(0)})
                  .error(),
              Problem::tooMuch);
}

// ISO 9706 as the Library of Congress table of permanence standards gives it: pH 7.5 to 10,
// reserve at least 0.4 mol/kg; the limits themselves are met.
TEST(Permanence, isJudgedByItsLimits) {
    EXPECT_TRUE(permanenceFaults(750, 400).empty());
    EXPECT_TRUE(permanenceFaults(1'000, 900).empty());
    EXPECT_EQ(permanenceFaults(749, 400), std::vector{Fault::phTooLow});
    EXPECT_EQ(permanenceFaults(1'001, 400), std::vector{Fault::phTooHigh});
    EXPECT_EQ(permanenceFaults(630, 399), (std::vector{Fault::phTooLow, Fault::reserveTooLow}));
    EXPECT_TRUE(permanenceFaults(std::nullopt, std::nullopt).empty());
}

} // namespace
} // namespace headcap::core
