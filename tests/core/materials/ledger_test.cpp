#include "core/materials/ledger.h"

#include <random>

#include <gtest/gtest.h>

#include "core/materials/shelf_life.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::at;
using tests::day;
using tests::JobBuilder;

Amount grams(std::int64_t g) {
    return Amount::of(Mass::grams(g));
}

void applyTo(Shelf& shelf, const Change& change) {
    for (const Write& write : change.writes) {
        if (const auto* lot = std::get_if<Lot>(&write.record)) {
            std::erase_if(shelf.lots, [&](const Lot& known) { return known.id == lot->id; });
            shelf.lots.push_back(*lot);
        } else if (const auto* part = std::get_if<LotPart>(&write.record)) {
            shelf.parts.push_back(*part);
        } else if (const auto* entry = std::get_if<LedgerEntry>(&write.record)) {
            shelf.ledger.push_back(*entry);
        }
    }
}

class Ledger : public testing::Test {
protected:
    Ledger() {
        m_b.material("wheat starch", MaterialClass::adhesiveDry, Unit::gram);
        m_b.material("paste", MaterialClass::adhesivePrepared, Unit::gram).shelfLifeDays = 14;
        m_b.material("kozo", MaterialClass::tissue, Unit::sheet);
        m_shelf.materials = m_b.file.materials;
    }
    Lot lot(const std::string& number, std::size_t material) {
        return Lot{.id = m_b.ids.next<Lot>(),
                   .number = number,
                   .material = m_shelf.materials[material].id,
                   .savedIn = std::nullopt,
                   .mixedBy = std::nullopt,
                   .parent = std::nullopt};
    }
    Hand hand() { return {m_b.anyone(), at(day(2031, 4, 2))}; }

    JobBuilder m_b;
    Shelf m_shelf;
};

TEST_F(Ledger, whatAMixTakesLeavesItsSources) {
    const Lot starch = lot("31-001", 0);
    applyTo(m_shelf, *receiveLot(starch, grams(500), m_shelf, hand(), m_b.ids));
    Lot paste = lot("31-002", 1);
    paste.origin = LotOrigin::mixed;
    const auto change =
        mixLot(paste, {{starch.id, grams(57)}}, grams(457), m_shelf, hand(), m_b.ids);
    ASSERT_TRUE(change);
    EXPECT_EQ(change->sentence, "Lot 31-002 mixed: paste, 457 g from 57 g of 31-001");
    applyTo(m_shelf, *change);
    EXPECT_EQ(m_shelf.balanceOf(starch.id), grams(443));
    EXPECT_EQ(m_shelf.balanceOf(paste.id), grams(457));
    ASSERT_EQ(m_shelf.parts.size(), 1U);
    EXPECT_EQ(m_shelf.parts.front().source, starch.id);
}

TEST_F(Ledger, countingSetsTheBalanceRight) {
    const Lot starch = lot("31-001", 0);
    applyTo(m_shelf, *receiveLot(starch, grams(500), m_shelf, hand(), m_b.ids));
    for (const std::int64_t counted : {480, 510, 510, 0}) {
        applyTo(m_shelf, *countLot(starch, grams(counted), "", m_shelf, hand(), m_b.ids));
        EXPECT_EQ(m_shelf.balanceOf(starch.id), grams(counted));
    }
}

TEST_F(Ledger, whatIsThrownAwayIsLeftOutOfTheBalance) {
    const Lot starch = lot("31-001", 0);
    applyTo(m_shelf, *receiveLot(starch, grams(500), m_shelf, hand(), m_b.ids));
    applyTo(m_shelf, *discardFrom(starch, grams(20), "spilt", m_shelf, hand(), m_b.ids));
    EXPECT_EQ(m_shelf.balanceOf(starch.id), grams(480));
    applyTo(m_shelf, *discardFrom(starch, grams(480), "weevils", m_shelf, hand(), m_b.ids));
    EXPECT_EQ(m_shelf.balanceOf(starch.id), grams(0));
}

TEST_F(Ledger, refusesWhatItCanNotCount) {
    const Lot starch = lot("31-001", 0);
    const auto problem = [&](const auto& result) { return result.error(); };
    EXPECT_EQ(problem(receiveLot(starch, Amount::sheets(2), m_shelf, hand(), m_b.ids)),
              LedgerProblem::unitDiffers);
    EXPECT_EQ(problem(receiveLot(starch, grams(0), m_shelf, hand(), m_b.ids)),
              LedgerProblem::amountNotAbove);
    EXPECT_EQ(problem(receiveLot(lot("", 0), grams(1), m_shelf, hand(), m_b.ids)),
              LedgerProblem::numberMissing);
    Lot saved = lot("31-009", 2);
    saved.origin = LotOrigin::saved;
    EXPECT_EQ(problem(receiveLot(saved, Amount::sheets(3), m_shelf, hand(), m_b.ids)),
              LedgerProblem::sourceMissing);
    EXPECT_EQ(problem(mixLot(lot("31-002", 1), {}, grams(1), m_shelf, hand(), m_b.ids)),
              LedgerProblem::sourceMissing);
    EXPECT_EQ(problem(mixLot(lot("31-002", 1), {{starch.id, grams(1)}}, grams(1), m_shelf, hand(),
                             m_b.ids)),
              LedgerProblem::lotUnknown);
    EXPECT_EQ(problem(discardFrom(starch, grams(1), "", m_shelf, hand(), m_b.ids)),
              LedgerProblem::reasonMissing);
}

// Nothing appears from nowhere: all that lots hold and steps used is what was received or counted.
TEST_F(Ledger, addsUpOverAnyHistory) {
    std::mt19937 chance{11};
    for (int history = 0; history < 50; ++history) {
        Shelf shelf{.materials = m_shelf.materials};
        std::int64_t fromOutside = 0;
        std::int64_t thrownAway = 0;
        for (int i = 0; i < 40; ++i) {
            const Amount amount = grams(1 + static_cast<std::int64_t>(chance() % 90));
            const auto act = chance() % 4;
            if (act == 0 || shelf.lots.empty()) {
                applyTo(shelf,
                        *receiveLot(lot(std::to_string(i), 0), amount, shelf, hand(), m_b.ids));
                fromOutside += amount.count;
                continue;
            }
            const Lot known = shelf.lots[chance() % shelf.lots.size()];
            const Amount held = *shelf.balanceOf(known.id);
            if (act == 1) {
                // A mix of dry starch alone gives what it took.
                applyTo(shelf, *mixLot(lot(std::to_string(i), 0), {{known.id, amount}}, amount,
                                       shelf, hand(), m_b.ids));
            } else if (act == 2) {
                applyTo(shelf, *discardFrom(known, amount, "old", shelf, hand(), m_b.ids));
                thrownAway += amount.count;
            } else {
                applyTo(shelf, *countLot(known, amount, "", shelf, hand(), m_b.ids));
                fromOutside += amount.count - held.count;
            }
        }
        std::int64_t held = 0;
        for (const Lot& known : shelf.lots) {
            held += shelf.balanceOf(known.id)->count;
        }
        EXPECT_EQ(held, fromOutside - thrownAway);
    }
}

TEST_F(Ledger, aLotOnTheShelfTakesInMoreAndMixesWithoutBeingWrittenAgain) {
    const Lot starch = lot("31-001", 0);
    const Lot paste = lot("31-002", 1);
    m_shelf.lots = {starch, paste};
    const auto more = takeIn(starch, grams(500), m_shelf, hand(), m_b.ids);
    ASSERT_TRUE(more);
    ASSERT_EQ(more->writes.size(), 1U);
    applyTo(m_shelf, *more);
    const auto mixed =
        mixInto(paste, {{starch.id, grams(57)}}, grams(457), m_shelf, hand(), m_b.ids);
    ASSERT_TRUE(mixed);
    for (const Write& write : mixed->writes) {
        EXPECT_FALSE(std::holds_alternative<Lot>(write.record));
    }
    applyTo(m_shelf, *mixed);
    EXPECT_EQ(m_shelf.balanceOf(starch.id), grams(443));
    EXPECT_EQ(m_shelf.balanceOf(paste.id), grams(457));
}

TEST_F(Ledger, anEntryOfAnotherUnitHasNoBalance) {
    const Lot starch = lot("31-001", 0);
    applyTo(m_shelf, *receiveLot(starch, grams(500), m_shelf, hand(), m_b.ids));
    m_shelf.ledger.front().amount = Amount::sheets(1);
    EXPECT_EQ(m_shelf.balanceOf(starch.id), std::nullopt);
}

// Life of wheat starch paste: two weeks (several published recipes).
TEST_F(Ledger, aLotAgesFromItsMixing) {
    Lot paste = lot("31-002", 1);
    const Material& kind = m_shelf.materials[1];
    EXPECT_EQ(ageOf(paste, &kind, day(2031, 4, 2)), LotAge::keeps);
    paste.mixedOn = day(2031, 4, 1);
    EXPECT_EQ(goodUntilOf(paste, &kind), day(2031, 4, 15));
    EXPECT_EQ(ageOf(paste, &kind, day(2031, 4, 13)), LotAge::fresh);
    EXPECT_EQ(ageOf(paste, &kind, day(2031, 4, 14)), LotAge::nearDate);
    EXPECT_EQ(ageOf(paste, &kind, day(2031, 4, 15)), LotAge::nearDate);
    EXPECT_EQ(ageOf(paste, &kind, day(2031, 4, 16)), LotAge::overdue);
    paste.goodUntil = day(2031, 5, 1);
    EXPECT_EQ(ageOf(paste, &kind, day(2031, 4, 16)), LotAge::fresh);
}

} // namespace
} // namespace headcap::core
