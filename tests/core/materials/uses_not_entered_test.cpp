#include "core/materials/uses_not_entered.h"

#include <set>

#include <gtest/gtest.h>

#include "tests/support/random_shelf.h"

namespace headcap::core {
namespace {

// Use by use over the whole shelf.
TEST(UsesNotEntered, areThoseThatNoEntryNames) {
    tests::RandomShelf r{5, {}};
    const std::vector<LedgerEntry> none;
    std::size_t all = 0;
    for (const Lot& lot : r.all.lots) {
        const auto trace = traceLot(r.all, lot.id);
        ASSERT_TRUE(trace);
        const auto open = usesNotEntered(*trace, none);
        all += open.size();
        std::vector<LedgerEntry> ledger;
        for (const TracedUse& one : open) {
            EXPECT_EQ(one.use->lot, lot.id); // its own, none of what was mixed of it
            ledger.push_back({.id = r.ids.next<LedgerEntry>(),
                              .lot = lot.id,
                              .kind = LedgerKind::used,
                              .use = one.use->id});
        }
        EXPECT_TRUE(usesNotEntered(*trace, ledger).empty());
        if (!ledger.empty()) {
            ledger.pop_back();
            const auto rest = usesNotEntered(*trace, ledger);
            ASSERT_EQ(rest.size(), 1U);
            EXPECT_EQ(rest.front().use, open.back().use);
        }
    }
    EXPECT_GT(all, 0U);
}

// Their sheet left the ledger when it was cut.
TEST(UsesNotEntered, isNoUseOfCutPieces) {
    tests::RandomShelf r{5, {}};
    for (MaterialUse& use : r.all.uses) {
        use.amount.reset();
        use.material = "2 pieces cut for this job";
    }
    for (const Lot& lot : r.all.lots) {
        EXPECT_TRUE(usesNotEntered(*traceLot(r.all, lot.id), {}).empty());
    }
}

} // namespace
} // namespace headcap::core
