#include "core/materials/shelf_index.h"

#include <gtest/gtest.h>

#include "tests/support/random_shelf.h"

namespace headcap::core {
namespace {

void expectTheSame(const Shelf& shelf) {
    const ShelfIndex index{shelf};
    for (const Lot& lot : shelf.lots) {
        EXPECT_EQ(index.balanceOf(lot), shelf.balanceOf(lot.id)) << lot.number;
        EXPECT_EQ(index.material(lot.material), shelf.material(lot.material)) << lot.number;
    }
}

TEST(ShelfIndex, saysWhatTheShelfSaysOfEachLot) {
    for (std::uint64_t seed = 0; seed < 20; ++seed) {
        tests::RandomShelf made{seed, {}};
        expectTheSame(made.shelf);
    }
}

TEST(ShelfIndex, saysNothingWhereNoSumCanBeMade) {
    tests::RandomShelf made{7, {}};
    Shelf& shelf = made.shelf;
    const Id<Lot> other = shelf.lots.front().id;
    LedgerEntry wrong = shelf.ledger.front();
    wrong.lot = other;
    wrong.amount.unit = shelf.balanceOf(other)->unit == Unit::gram ? Unit::metre : Unit::gram;
    shelf.ledger.push_back(wrong); // of another unit
    EXPECT_EQ(ShelfIndex{shelf}.balanceOf(shelf.lots.front()), std::nullopt);
    shelf.lots.back().material = made.ids.next<Material>(); // of a kind that is not known
    EXPECT_EQ(ShelfIndex{shelf}.balanceOf(shelf.lots.back()), std::nullopt);
    expectTheSame(shelf);
}

} // namespace
} // namespace headcap::core
