#include "core/materials/stock_report.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/materials/lot_cost.h"
#include "core/materials/sheet_stock.h"
#include "tests/support/job_builder.h"
#include "tests/support/random_shelf.h"

namespace headcap::core {
namespace {

using tests::day;
using tests::RandomShelf;

Amount grams(std::int64_t g) {
    return Amount::of(Mass::grams(g));
}

// What is on the shelf today is what the balances say; what was there before anything came,
// nothing.
TEST(StockReport, todaysStockIsTheBalances) {
    const RandomShelf r{7, {}};
    const Day today = r.clock.today();
    std::size_t expected = 0;
    for (const Lot& lot : r.shelf.lots) {
        expected += r.shelf.balanceOf(lot.id)->count != 0 ? 1 : 0;
    }
    const auto lines = stockOn(r.shelf, today, r.clock);
    EXPECT_EQ(lines.size(), expected);
    for (const StockLine& line : lines) {
        EXPECT_EQ(line.balance, r.shelf.balanceOf(line.lot->id));
    }
    EXPECT_TRUE(stockOn(r.shelf, day(2030, 1, 1), r.clock).empty());
}

// All the years together are all that was used and mixed, what was taken back apart.
TEST(StockReport, theYearsAddUpToWhatWasUsed) {
    const RandomShelf r{8, {}};
    std::int64_t expected = 0;
    for (const LedgerEntry& entry : r.shelf.ledger) {
        if (entry.kind == LedgerKind::used || entry.kind == LedgerKind::mixedOut ||
            entry.kind == LedgerKind::contrary) {
            expected -= entry.amount.count;
        }
    }
    std::int64_t said = 0;
    for (const YearsUse& use : useByYear(r.shelf, r.clock)) {
        for (const auto& [year, amount] : use.byYear) {
            said += amount.count;
        }
    }
    EXPECT_EQ(said, expected);
    EXPECT_GT(said, 0);
}

class Report : public testing::Test {
protected:
    Report() {
        b.lot("31-001", "tissue", grams(100));
        b.lot("31-002", "glue", grams(100)).goodUntil = day(2031, 4, 20);
        b.lot("31-003", "glue", grams(100)).goodUntil = day(2032, 4, 20);
    }
    Shelf shelf() { return shelfOf(b.file); }
    tests::JobBuilder b;
};

TEST_F(Report, whatGoesOffSoonIsTold) {
    const Shelf now = shelf();
    const auto off = goingOff(now, day(2031, 4, 2), 30, b.clock);
    ASSERT_EQ(off.size(), 1U);
    EXPECT_EQ(off.front().lot->number, "31-002");
    EXPECT_TRUE(goingOff(now, day(2031, 4, 2), 10, b.clock).empty());
}

TEST_F(Report, whatRunsOutIsToldByItsPace) {
    b.use(b.step("tear_mending", "B2", day(2031, 3, 1)), "31-001", grams(90));
    b.use(b.step("tear_mending", "B3", day(2031, 3, 2)), "31-002", grams(20));
    const Shelf now = shelf();
    const auto out = runningOut(now, day(2031, 4, 2), 60, b.clock);
    ASSERT_EQ(out.size(), 1U);
    EXPECT_EQ(out.front().kind->name, "tissue");
    EXPECT_EQ(out.front().left, grams(10));
    EXPECT_EQ(out.front().days, 40); // 10 of 90 a year
}

TEST_F(Report, aMixCostsWhatItsPartsCost) {
    b.file.lots[0].cost = Money{2'000, "EUR"}; // 100 g: 20 cents a gram
    b.file.lots[1].cost = Money{1'000, "EUR"};
    Lot& mix = b.lot("31-004", "paste", grams(60));
    mix.origin = LotOrigin::mixed;
    for (const std::size_t i : {0U, 1U}) {
        b.file.lotParts.push_back({.id = b.ids.next<LotPart>(),
                                   .lot = b.lotNumbered("31-004").id,
                                   .source = b.file.lots[i].id,
                                   .amount = grams(30)});
    }
    // 30 g at 20 and 30 g at 10 cents are 900 cents in 60 g.
    EXPECT_EQ(costOf(b.lotNumbered("31-004"), grams(10), shelf()), (Money{150, "EUR"}));
    b.file.lots[1].cost = Money{1'000, "GBP"};
    EXPECT_FALSE(costOf(b.lotNumbered("31-004"), grams(10), shelf()));
    b.file.lots[1].cost.reset();
    EXPECT_FALSE(costOf(b.lotNumbered("31-004"), grams(10), shelf()));
}

TEST_F(Report, anOffcutCostsItsShareOfTheSheet) {
    b.lot("31-010", "paper", Amount::sheets(10));
    Lot& sheet = b.file.lots.back();
    sheet.cost = Money{5'000, "EUR"};
    sheet.sheetWidth = Length::millimetres(600);
    sheet.sheetHeight = Length::millimetres(800);
    const Id<Lot> parent = sheet.id;
    b.lot("31-011", "paper", Amount::sheets(1));
    Lot& offcut = b.file.lots.back();
    offcut.origin = LotOrigin::offcut;
    offcut.parent = parent;
    offcut.sheetWidth = Length::millimetres(300);
    offcut.sheetHeight = Length::millimetres(400);
    EXPECT_EQ(costOf(b.lotNumbered("31-011"), Amount::sheets(1), shelf()), (Money{125, "EUR"}));
    // By area, where the lot can be converted.
    EXPECT_EQ(
        costOf(b.lotNumbered("31-010"), Amount::of(Area::squareMillimetres(240'000)), shelf()),
        (Money{250, "EUR"}));
}

// The plan of cutting and the report ask the same price.
TEST_F(Report, anOffcutCountsInAPlanForWhatItCost) {
    b.lot("31-010", "paper", Amount::sheets(3)).cost = Money{1'000, "EUR"};
    b.file.materials.back().price =
        Money{900, "EUR"}; // the kind's, which the lot's own goes before
    Lot& sheet = b.file.lots.back();
    sheet.sheetWidth = Length::millimetres(600);
    sheet.sheetHeight = Length::millimetres(800);
    const Id<Lot> parent = sheet.id;
    Lot& offcut = b.lot("31-011", "paper", Amount::sheets(1));
    offcut.origin = LotOrigin::offcut;
    offcut.parent = parent;
    offcut.sheetWidth = Length::millimetres(600);
    offcut.sheetHeight = Length::millimetres(400);
    const auto sheets = sheetsOnShelf(shelf(), {.offcutCostPpm = 1'000'000});
    ASSERT_EQ(sheets.size(), 2U);
    EXPECT_EQ(sheets[0].sheet.cost, 333 * 1'000'000);
    EXPECT_EQ(sheets[1].sheet.cost, 167 * 1'000'000); // half of 333.33
    for (const SheetOfLot& one : sheets) {
        const Shelf now = shelf();
        EXPECT_EQ(*one.sheet.cost,
                  costOf(*now.lot(one.lot), Amount::sheets(1), now)->minor * 1'000'000);
    }
}

// Each cut from the other, and a third from them: a plan is made all the same, by area.
TEST_F(Report, aCircleOfParentsEnds) {
    std::vector<Id<Lot>> ids;
    for (const char* number : {"31-010", "31-011", "31-012"}) {
        Lot& lot = b.lot(number, "paper", Amount::sheets(1));
        lot.origin = LotOrigin::offcut;
        lot.sheetWidth = Length::millimetres(600);
        lot.sheetHeight = Length::millimetres(800);
        ids.push_back(lot.id);
    }
    b.file.materials.back().price = Money{900, "EUR"};
    b.file.lots[3].parent = ids[1];
    b.file.lots[4].parent = ids[0];
    b.file.lots[5].parent = ids[0];
    EXPECT_EQ(sheetsOnShelf(shelf(), {.offcutCostPpm = 1'000'000})[2].sheet.cost,
              areaOf(Length::millimetres(600), Length::millimetres(800)).count());
}

// 24 dm² of a sheet of 48: half of what a sheet cost.
TEST_F(Report, aPartTakenInAnotherUnitCostsItsShare) {
    b.lot("31-010", "paper", Amount::sheets(10)).cost = Money{5'000, "EUR"};
    b.file.lots.back().sheetWidth = Length::millimetres(600);
    b.file.lots.back().sheetHeight = Length::millimetres(800);
    const Id<Lot> source = b.file.lots.back().id;
    b.lot("31-020", "glue", grams(100)).origin = LotOrigin::mixed;
    b.file.lotParts.push_back({.id = b.ids.next<LotPart>(),
                               .lot = b.file.lots.back().id,
                               .source = source,
                               .amount = Amount::of(Area::squareMillimetres(240'000))});
    EXPECT_EQ(costOf(b.lotNumbered("31-020"), grams(100), shelf()), (Money{250, "EUR"}));
    b.file.lotParts.back().amount = grams(10); // nothing says what the paper weighs
    EXPECT_FALSE(costOf(b.lotNumbered("31-020"), grams(100), shelf()));
}

TEST_F(Report, aCircleOfWrongRecordsHasNoCost) {
    Lot& one = b.file.lots[0];
    one.origin = LotOrigin::mixed;
    b.file.lotParts.push_back(
        {.id = b.ids.next<LotPart>(), .lot = one.id, .source = one.id, .amount = grams(10)});
    EXPECT_FALSE(costOf(b.file.lots[0], grams(1), shelf()));
}

} // namespace
} // namespace headcap::core
