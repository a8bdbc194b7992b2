// What an amount of a lot cost, to the minor unit: rounded once and half away from nothing, as the
// prices of a proposal are.
#include "core/materials/lot_cost.h"

#include <random>

#include <gtest/gtest.h>

#include "core/materials/job_cost.h"
#include "core/report/materials_sheet.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;

Money euro(std::int64_t cents) {
    return {cents, "EUR"};
}

Amount grams(std::int64_t g) {
    return Amount::of(Mass::grams(g));
}

class LotCostTest : public testing::Test {
protected:
    Lot& bought(const std::string& number, const std::string& kind, Amount came,
                std::int64_t cents) {
        Lot& lot = b.lot(number, kind, came);
        lot.cost = euro(cents);
        return lot;
    }
    void mixedOf(const std::string& number, const std::string& source, Amount amount) {
        b.file.lotParts.push_back({.id = b.ids.next<LotPart>(),
                                   .lot = b.lotNumbered(number).id,
                                   .source = b.lotNumbered(source).id,
                                   .amount = amount});
    }
    std::optional<Money> cost(const std::string& number, Amount amount) {
        return costOf(b.lotNumbered(number), amount, shelfOf(b.file));
    }

    tests::JobBuilder b;
};

TEST_F(LotCostTest, halfACentIsRoundedUpWhateverTheLotCameAs) {
    bought("31-001", "blotter", Amount::sheets(100), 15);
    for (const auto& [sheets, cents] : {std::pair{10, 2}, {50, 8}, {70, 11}, {90, 14}, {30, 5}}) {
        EXPECT_EQ(cost("31-001", Amount::sheets(sheets)), euro(cents)) << sheets; // n.5 each
    }
    bought("31-002", "kozo", Amount::sheets(20), 90);
    EXPECT_EQ(cost("31-002", Amount::sheets(3)), euro(14)); // 13.5
}

TEST_F(LotCostTest, theWholeOfALotIsWhatItCost) {
    std::mt19937 chance{5};
    for (int i = 0; i < 300; ++i) {
        const std::string number = "31-" + std::to_string(100 + i);
        const auto cents = static_cast<std::int64_t>(chance() % 100'000);
        const Amount came = grams(1 + static_cast<std::int64_t>(chance() % 5'000));
        bought(number, "wheat starch", came, cents);
        EXPECT_EQ(cost(number, came), euro(cents));
    }
}

TEST_F(LotCostTest, aMixIsItsPartsRoundedAtTheEndOnly) {
    b.material("starch", MaterialClass::adhesiveDry, Unit::gram);
    b.material("paste", MaterialClass::adhesivePrepared, Unit::gram);
    bought("31-001", "starch", grams(300), 100); // a third of a cent a gram
    b.lot("31-010", "paste", grams(90)).origin = LotOrigin::mixed;
    mixedOf("31-010", "31-001", grams(30)); // ten cents in all
    EXPECT_EQ(cost("31-010", grams(90)), euro(10));
    EXPECT_EQ(cost("31-010", grams(45)), euro(5));
    // A mix of the mix: nine times a ninth of a cent, and half a cent of it goes up.
    b.lot("31-011", "paste", grams(180)).origin = LotOrigin::mixed;
    mixedOf("31-011", "31-010", grams(9)); // one cent in all
    EXPECT_EQ(cost("31-011", grams(180)), euro(1));
    EXPECT_EQ(cost("31-011", grams(90)), euro(1));
    EXPECT_EQ(cost("31-011", grams(89)), euro(0));
}

TEST_F(LotCostTest, aMixOfTwoCurrenciesOrOfAnUnknownPartHasNoCost) {
    b.material("paste", MaterialClass::adhesivePrepared, Unit::gram);
    bought("31-001", "starch", grams(300), 100);
    bought("31-002", "methyl cellulose", grams(300), 100).cost->currency = "CHF";
    b.lot("31-010", "paste", grams(60)).origin = LotOrigin::mixed;
    mixedOf("31-010", "31-001", grams(30));
    EXPECT_TRUE(cost("31-010", grams(1)).has_value());
    mixedOf("31-010", "31-002", grams(30));
    EXPECT_EQ(cost("31-010", grams(1)), std::nullopt);
}

// The sum under the printed sheet is that of the figures which stand on it.
TEST_F(LotCostTest, theSheetsSumIsThatOfItsLines) {
    bought("31-001", "blotter", Amount::sheets(100), 15);
    bought("31-002", "kozo", Amount::sheets(20), 90);
    std::int64_t sum = 0;
    for (int i = 1; i < 12; ++i) {
        const Step& step = b.step("tear_mending", "B" + std::to_string(i), day(2031, 4, 1));
        const std::string number = i % 2 == 0 ? "31-001" : "31-002";
        b.use(step, number, Amount::sheets(i));
        sum += cost(number, Amount::sheets(i))->minor;
    }
    EXPECT_EQ(jobCost(b.file).spent, std::vector{euro(sum)});
    const std::string sheet = plainText(materialsSheet(b.file, {}, b.clock));
    EXPECT_NE(sheet.find("Materials used: " + toText(euro(sum))), std::string::npos) << sheet;
}

} // namespace
} // namespace headcap::core
