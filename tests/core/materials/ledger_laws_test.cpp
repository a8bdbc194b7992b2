#include "core/materials/ledger_laws.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/support/random_shelf.h"

namespace headcap::core {
namespace {

using tests::RandomShelf;

class RandomLedger : public testing::TestWithParam<int> {
protected:
    RandomShelf r{static_cast<std::uint64_t>(GetParam()), {}};
    LedgerBook book() { return {.shelf = r.shelf, .uses = r.all.uses, .steps = r.all.steps}; }

    static bool tells(const LedgerBook& book, LedgerLaw law) {
        return std::ranges::any_of(ledgerBreaches(book),
                                   [&](const LedgerBreach& one) { return one.law == law; });
    }
    std::vector<std::size_t> entriesOf(LedgerKind kind) {
        std::vector<std::size_t> found;
        for (std::size_t i = 0; i < r.shelf.ledger.size(); ++i) {
            if (r.shelf.ledger[i].kind == kind) {
                found.push_back(i);
            }
        }
        return found;
    }
};

// What the program itself books can overdraw a lot, and the ledger says so; no other law can break.
TEST_P(RandomLedger, holdsWhateverIsBooked) {
    for (const LedgerBreach& one : ledgerBreaches(book())) {
        EXPECT_EQ(one.law, LedgerLaw::notBelowNothing) << one.sentence;
    }
}

TEST_P(RandomLedger, aLotIsBelowNothingJustWhenItsBalanceIs) {
    std::vector<RecordRef> expected;
    for (const Lot& lot : r.shelf.lots) {
        if (r.shelf.balanceOf(lot.id)->count < 0) {
            expected.push_back(refOf(lot.id));
        }
    }
    std::vector<RecordRef> told;
    for (const LedgerBreach& one : ledgerBreaches(book())) {
        told.push_back(one.record);
    }
    EXPECT_EQ(told, expected);
}

TEST_P(RandomLedger, noEntryOfAMixOrAUseCanBeAlteredOrLost) {
    for (const auto& [kind, law] : {std::pair{LedgerKind::mixedOut, LedgerLaw::mixTook},
                                    std::pair{LedgerKind::used, LedgerLaw::useBooked}}) {
        for (const std::size_t i : entriesOf(kind)) {
            LedgerBook altered = book();
            altered.shelf.ledger[i].amount.count -= 1;
            EXPECT_TRUE(tells(altered, law));
            LedgerBook lost = book();
            lost.shelf.ledger.erase(lost.shelf.ledger.begin() + static_cast<std::ptrdiff_t>(i));
            EXPECT_TRUE(tells(lost, law) || tells(lost, LedgerLaw::contrary));
        }
    }
}

TEST_P(RandomLedger, aMixTakenBackTookNothing) {
    LedgerBook undone = book();
    const auto takeBack = [&](const LedgerEntry& entry) {
        LedgerEntry contrary = entry;
        contrary.id = r.ids.next<LedgerEntry>();
        contrary.kind = LedgerKind::contrary;
        contrary.amount = entry.amount.negated();
        contrary.contraryOf = entry.id;
        undone.shelf.ledger.push_back(contrary);
    };
    const LedgerEntry given = r.shelf.ledger[entriesOf(LedgerKind::mixedIn).back()];
    takeBack(given);
    for (const LotPart& part : r.shelf.parts) {
        if (part.lot == given.lot) {
            const auto out = std::ranges::find_if(r.shelf.ledger, [&](const LedgerEntry& entry) {
                return entry.kind == LedgerKind::mixedOut && entry.at == given.at &&
                       entry.lot == part.source && entry.amount == part.amount.negated();
            });
            ASSERT_NE(out, r.shelf.ledger.end());
            takeBack(*out);
        }
    }
    EXPECT_FALSE(tells(undone, LedgerLaw::mixTook));
    undone.shelf.ledger.pop_back(); // what one part took is not given back
    EXPECT_TRUE(tells(undone, LedgerLaw::mixTook));
}

TEST_P(RandomLedger, aMixCannotGrow) {
    for (const std::size_t i : entriesOf(LedgerKind::mixedIn)) {
        LedgerBook altered = book();
        altered.shelf.ledger[i].amount.count = altered.shelf.ledger[i].amount.count / 100 * 103;
        EXPECT_TRUE(tells(altered, LedgerLaw::mixGave));
    }
}

TEST_P(RandomLedger, aContraryTakesBackOnceAndExactly) {
    for (const std::size_t i : entriesOf(LedgerKind::contrary)) {
        LedgerBook altered = book();
        altered.shelf.ledger[i].amount.count += 1;
        EXPECT_TRUE(tells(altered, LedgerLaw::contrary));
        LedgerBook twice = book();
        twice.shelf.ledger.push_back(twice.shelf.ledger[i]);
        twice.shelf.ledger.back().id = r.ids.next<LedgerEntry>();
        EXPECT_TRUE(tells(twice, LedgerLaw::contrary));
    }
}

TEST_P(RandomLedger, whatNoStepSaysWasNotUsed) {
    LedgerBook altered = book();
    altered.shelf.ledger[entriesOf(LedgerKind::used).front()].use.reset();
    EXPECT_TRUE(tells(altered, LedgerLaw::useSaid));
    EXPECT_TRUE(tells(altered, LedgerLaw::useBooked));
}

INSTANTIATE_TEST_SUITE_P(Histories, RandomLedger, testing::Range(1, 9));

} // namespace
} // namespace headcap::core
