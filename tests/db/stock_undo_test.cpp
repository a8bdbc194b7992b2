// Mixes, cuttings and uses, done and undone in a real workshop: every balance comes back, and the
// ledger keeps its laws all the while.
#include <gtest/gtest.h>

#include "core/cutting/plan_cuts.h"
#include "core/materials/cutting_booking.h"
#include "core/materials/ledger.h"
#include "core/materials/sheet_stock.h"
#include "core/materials/trace.h"
#include "core/treatment/bench_log.h"
#include "tests/db/workshop_fixture.h"

namespace headcap::core {
namespace {

class StockUndoTest : public test::WorkshopFixture {
protected:
    StockUndoTest() {
        Change change{.sentence = "Kinds", .who = person.id};
        change.add(starch).add(paste).add(paper);
        test::mustApply(records(), change);
        keep(receiveLot(bag, Amount::of(Mass::grams(500)), shelf(), hand(), ids));
        keep(receiveLot(ream, Amount::sheets(5), shelf(), hand(), ids));
    }
    template <class Problem>
    void keep(tl::expected<Change, Problem> change) {
        ASSERT_TRUE(change);
        test::mustApply(records(), *change);
    }
    void expectSound(const char* after) {
        const auto said = stores().upkeep.verify([](std::int64_t, std::int64_t) { return true; });
        for (const VerifyFinding& finding : said.findings) {
            ADD_FAILURE() << after << ": " << finding.what << ": " << finding.sentence;
        }
    }
    Shelf shelf() { return loadShelf(records()); }
    Hand hand() { return {person.id, clock.now()}; }
    void undo() { ASSERT_TRUE(journal().undo(person.id)); }

    Material starch{.id = ids.next<Material>(), .name = "starch", .unit = Unit::gram};
    Material paste{.id = ids.next<Material>(), .name = "paste", .unit = Unit::gram};
    Material paper{.id = ids.next<Material>(), .name = "paper", .unit = Unit::sheet};
    Lot bag{.id = ids.next<Lot>(), .number = "31-001", .material = starch.id};
    Lot ream{.id = ids.next<Lot>(),
             .number = "31-002",
             .material = paper.id,
             .sheetWidth = Length::millimetres(640),
             .sheetHeight = Length::millimetres(900),
             .grain = Grain::alongHeight};
};

TEST_F(StockUndoTest, aMixUndoneGivesItsPartsBack) {
    const Lot mix{.id = ids.next<Lot>(),
                  .number = "31-003",
                  .material = paste.id,
                  .origin = LotOrigin::mixed};
    keep(mixLot(mix, {{bag.id, Amount::of(Mass::grams(57)), {}}}, Amount::of(Mass::grams(50)),
                shelf(), hand(), ids));
    expectSound("mixed");
    EXPECT_EQ(shelf().balanceOf(bag.id), Amount::of(Mass::grams(443)));
    undo();
    expectSound("undone");
    EXPECT_EQ(shelf().balanceOf(bag.id), Amount::of(Mass::grams(500)));
    EXPECT_EQ(shelf().balanceOf(mix.id), Amount::of(Mass::grams(0)));
}

TEST_F(StockUndoTest, aCuttingUndonePutsTheSheetsBack) {
    CuttingToBook cutting{.job = job.id};
    for (SheetOfLot& one : sheetsOnShelf(shelf(), {})) {
        cutting.lots.push_back(one.lot);
        cutting.problem.sheets.push_back(std::move(one.sheet));
    }
    cutting.problem.pieces = {{.id = "fold",
                               .width = Length::millimetres(242),
                               .height = Length::millimetres(196),
                               .grain = GrainWay::alongHeight,
                               .count = 4}};
    cutting.problem.rules = CuttingHouse{}.rules;
    SearchLimits little;
    little.work = 20'000'000;
    cutting.plan = *planCuts(cutting.problem, little);
    keep(bookCutting(cutting, shelf(), "31-002", clock.today(), hand(), ids));
    expectSound("cut");
    EXPECT_EQ(shelf().balanceOf(ream.id), Amount::sheets(4));
    const auto where = loadWhereabouts(records(), ream.id);
    ASSERT_EQ(traceLot(where, ream.id)->jobs.size(), 1U);
    EXPECT_EQ(traceLot(where, ream.id)->jobs.front().pieces.size(), 4U);
    undo();
    expectSound("undone");
    EXPECT_EQ(shelf().balanceOf(ream.id), Amount::sheets(5));
    for (const Lot& lot : shelf().lots) {
        if (lot.origin == LotOrigin::offcut) {
            EXPECT_EQ(shelf().balanceOf(lot.id), Amount::sheets(0));
            EXPECT_TRUE(lot.finished);
        }
    }
    const auto after = loadWhereabouts(records(), ream.id);
    EXPECT_TRUE(traceLot(after, ream.id)->jobs.empty());
}

// Used by area, counted in sheets.
TEST_F(StockUndoTest, aUseInAnotherMeasureIsBookedAsTheLotIsCounted) {
    const Step step = aStep("a guard put on");
    const MaterialUse use{.id = ids.next<MaterialUse>(),
                          .job = job.id,
                          .step = step.id,
                          .lot = ream.id,
                          .amount = Amount::of(Area::squareMillimetres(320 * 450))};
    keep(logStep({step, {use}}, shelf(), TechniquesInForce{}, ids));
    expectSound("used");
    EXPECT_EQ(shelf().balanceOf(ream.id), (Amount{4'750, Unit::sheet}));
    undo();
    expectSound("undone");
    EXPECT_EQ(shelf().balanceOf(ream.id), Amount::sheets(5));
}

} // namespace
} // namespace headcap::core
