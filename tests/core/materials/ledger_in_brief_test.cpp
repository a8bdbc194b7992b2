#include "core/materials/ledger_in_brief.h"

#include <algorithm>
#include <limits>
#include <map>

#include <gtest/gtest.h>

#include "core/materials/ledger.h"
#include "core/materials/lot_cost.h"
#include "tests/support/random_shelf.h"

namespace headcap::core {
namespace {

class LedgerInBriefTest : public testing::TestWithParam<int> {
protected:
    tests::RandomShelf made{static_cast<std::uint64_t>(GetParam()), {}};
};

TEST_P(LedgerInBriefTest, everyBalanceAndCostIsThatOfTheWhole) {
    Shelf brief = made.shelf;
    brief.ledger = inBrief(made.shelf.ledger);
    EXPECT_LT(brief.ledger.size(), made.shelf.ledger.size());
    for (const Lot& lot : made.shelf.lots) {
        EXPECT_EQ(brief.balanceOf(lot.id), made.shelf.balanceOf(lot.id)) << lot.number;
        const Amount some = Amount::of(Mass::grams(3));
        EXPECT_EQ(costOf(lot, some, brief), costOf(lot, some, made.shelf)) << lot.number;
    }
}

TEST_P(LedgerInBriefTest, eachKindMovedAsMuchInAndOut) {
    const auto moved = [](const std::vector<LedgerEntry>& ledger) {
        std::map<std::tuple<Id<Lot>, LedgerKind, bool>, std::int64_t> all;
        for (const LedgerEntry& entry : ledger) {
            all[{entry.lot, entry.kind, entry.amount.count > 0}] += entry.amount.count;
        }
        return all;
    };
    EXPECT_EQ(moved(inBrief(made.shelf.ledger)), moved(made.shelf.ledger));
}

TEST_P(LedgerInBriefTest, inAnyOrderAndInBriefAgainItIsTheSame) {
    const auto once = inBrief(made.shelf.ledger);
    EXPECT_EQ(inBrief(once), once);
    std::reverse(made.shelf.ledger.begin(), made.shelf.ledger.end());
    EXPECT_EQ(inBrief(made.shelf.ledger), once);
}

INSTANTIATE_TEST_SUITE_P(Shelves, LedgerInBriefTest, testing::Range(1, 20));

TEST(LedgerInBrief, amountsBeyondCountingAddUpToNoBalanceInBriefEither) {
    tests::RandomShelf made{1, {.lots = 1, .jobs = 0, .uses = 0}};
    LedgerEntry entry = made.shelf.ledger.front();
    entry.amount.count = std::numeric_limits<std::int64_t>::max();
    const std::vector<LedgerEntry> ledger{entry, entry, entry};
    EXPECT_FALSE(balanceOf(entry.lot, entry.amount.unit, ledger));
    EXPECT_FALSE(balanceOf(entry.lot, entry.amount.unit, inBrief(ledger)));
    EXPECT_EQ(inBrief({entry}).front().amount, entry.amount);
}

} // namespace
} // namespace headcap::core
