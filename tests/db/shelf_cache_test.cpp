// The shelf in brief, as the store answers it from what it has kept, beside the whole read anew:
// the same after every change, whoever made it.
#include <algorithm>
#include <random>

#include <gtest/gtest.h>

#include "core/materials/ledger_in_brief.h"
#include "tests/db/database_look.h"
#include "tests/db/workshop_fixture.h"

namespace headcap::core {
namespace {

class ShelfCacheTest : public test::WorkshopFixture {
protected:
    ShelfCacheTest() {
        Change change{.sentence = "Shelf", .who = person.id};
        change.add(paste);
        for (Lot& lot : lots) {
            change.add(lot);
        }
        test::mustApply(records(), change);
    }
    void logUse(RecordStore& store) {
        const Step step = aStep("guarded");
        const auto lot = someLot();
        if (!lot) {
            return;
        }
        const MaterialUse use{.id = ids.next<MaterialUse>(),
                              .job = job.id,
                              .step = step.id,
                              .lot = *lot,
                              .amount = Amount::of(Mass::milligrams(400))};
        test::mustApply(store, Change{.sentence = "Step", .who = person.id}.add(step).add(use).add(
                                   LedgerEntry{.id = ids.next<LedgerEntry>(),
                                               .lot = *lot,
                                               .at = clock.now(),
                                               .kind = LedgerKind::used,
                                               .amount = use.amount->negated(),
                                               .use = use.id}));
    }
    void receive(RecordStore& store) {
        const auto lot = someLot();
        if (!lot) {
            return;
        }
        const auto grams = static_cast<std::int64_t>(some(90'000));
        test::mustApply(store, Change{.sentence = "Received", .who = person.id}.add(
                                   LedgerEntry{.id = ids.next<LedgerEntry>(),
                                               .lot = *lot,
                                               .at = clock.now(),
                                               .amount = Amount::of(Mass::grams(grams))}));
    }
    void addLot(RecordStore& store) {
        if (!find(store, paste.id)) {
            return; // its taking in was undone
        }
        const Id<Lot> id = ids.next<Lot>();
        test::mustApply(store, Change{.sentence = "Lot", .who = person.id}.add(
                                   Lot{.id = id, .number = id.text(), .material = paste.id}));
    }
    // Of those that are there: taking one in may have been undone.
    std::optional<Id<Lot>> someLot() {
        const auto there = all<Lot>(records());
        return there.empty() ? std::nullopt : std::optional{there[some(there.size())].record.id};
    }
    void expectTheWhole(const RecordStore& store) {
        const Shelf whole = loadShelf(store);
        const auto brief = shelfInBrief(store);
        EXPECT_EQ(brief->materials, whole.materials);
        EXPECT_EQ(brief->lots, whole.lots);
        EXPECT_EQ(brief->parts, whole.parts);
        EXPECT_EQ(brief->ledger, inBrief(whole.ledger));
    }
    // What a job's file says of its lots.
    void expectTheJobs(const RecordStore& store) {
        const auto file = *loadJobFile(store, job.id);
        const Shelf whole = loadShelf(store);
        for (const MaterialUse& use : file.uses) {
            const auto ours = [&](const LedgerEntry& entry) { return entry.use == use.id; };
            EXPECT_EQ(std::ranges::count_if(file.ledger, ours),
                      std::ranges::count_if(whole.ledger, ours));
        }
        for (const Lot& lot : file.lots) {
            EXPECT_EQ(shelfOf(file).balanceOf(lot.id), whole.balanceOf(lot.id)) << lot.number;
        }
    }
    std::size_t some(std::size_t n) {
        return std::uniform_int_distribution<std::size_t>{0, n - 1}(chance);
    }

    std::mt19937_64 chance{1590};
    Material paste{.id = ids.next<Material>(), .name = "paste", .unit = Unit::gram};
    std::vector<Lot> lots{{.id = ids.next<Lot>(), .number = "31-001", .material = paste.id},
                          {.id = ids.next<Lot>(), .number = "31-002", .material = paste.id}};
};

TEST_F(ShelfCacheTest, isTheWholeInBriefAfterEachChangeHereOrInAnotherWindow) {
    const auto other = workshops.open(folder());
    for (int i = 0; i < 120; ++i) {
        RecordStore& store = some(2) == 0 ? records() : other->stores().records;
        switch (some(5)) {
        case 0:
            receive(store);
            break;
        case 1:
            addLot(store);
            break;
        case 2:
            (void)journal().undo(person.id);
            break;
        case 3:
            (void)journal().redo(person.id);
            break;
        default:
            logUse(store);
        }
        expectTheWhole(records());
    }
    expectTheWhole(other->stores().records);
    expectTheJobs(records());
}

// The sums are derived: verify holds them against the lines.
TEST_F(ShelfCacheTest, aSumThatIsNotThatOfItsLinesIsFound) {
    receive(records());
    logUse(records());
    const auto findings = [&] {
        return stores().upkeep.verify([](std::int64_t, std::int64_t) { return true; }).findings;
    };
    EXPECT_TRUE(findings().empty());
    auto beside = test::openBeside(folder());
    beside.exec("UPDATE lot_sum SET rest = rest + 1 WHERE kind = 'received'");
    const auto found = findings();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().what, "ledger");
    EXPECT_EQ(found.front().record->kind, RecordKind::lot);
}

TEST_F(ShelfCacheTest, isKeptWhereNothingOfItWasTouched) {
    receive(records());
    const auto before = shelfInBrief(records());
    test::mustApply(records(), Change{.sentence = "Finding"}.add(aFinding("foxing")));
    EXPECT_EQ(shelfInBrief(records()), before) << "the same, not one like it";
    Material renamed = paste;
    renamed.name = "wheat starch paste";
    const auto read = find(records(), paste.id)->revision;
    test::mustApply(records(), Change{.sentence = "Renamed"}.update(renamed, read));
    EXPECT_EQ(shelfInBrief(records())->material(paste.id)->name, "wheat starch paste");
}

TEST_F(ShelfCacheTest, theOldOneStaysAsItWasForWhoHoldsIt) {
    receive(records());
    const auto held = shelfInBrief(records());
    const auto said = held->ledger;
    receive(records());
    EXPECT_EQ(held->ledger, said);
    EXPECT_NE(shelfInBrief(records())->ledger, said);
}

} // namespace
} // namespace headcap::core
