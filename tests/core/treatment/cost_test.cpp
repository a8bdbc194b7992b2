#include "core/treatment/cost.h"

#include <algorithm>
#include <limits>
#include <random>

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::JobBuilder;

Money euro(std::int64_t cents) {
    return {cents, "EUR"};
}

class CostTest : public testing::Test {
protected:
    CostTest() : option(b.option(b.proposal(), "A")) {
        b.file.workshop = Workshop{.id = b.ids.next<Workshop>()};
    }
    Proposal& proposal() { return b.file.proposals.front(); }
    ProposalLine& line(std::int64_t cents) {
        ProposalLine& made = b.line(option, "guarding");
        made.minutes = Minutes{0};
        made.price = euro(cents);
        return made;
    }
    OptionCost cost() { return costOf(b.file, proposal(), option.id); }

    JobBuilder b;
    ProposalOption option;
};

TEST_F(CostTest, roundsHalfAwayFromNothing) {
    EXPECT_EQ(shareOf(euro(1250), 190'000), euro(238)); // 2.375
    EXPECT_EQ(shareOf(euro(50), 190'000), euro(10));    // 0.095
    EXPECT_EQ(shareOf(euro(-50), 190'000), euro(-10));
    EXPECT_EQ(shareOf(euro(0), 190'000), euro(0));
    EXPECT_EQ(priceAt(euro(6'500), Minutes{20}), euro(2'167)); // 21.666…
    EXPECT_EQ(inProportion(euro(10'000), Minutes{1}, Minutes{3}), euro(3'333));
}

// Three lines of 0.50 at 19 %: by line 0.10 each (0.095 up), on the total 0.285 up.
TEST_F(CostTest, taxByLineAndOnTheTotalMayDifferByTheRounding) {
    for (int i = 0; i < 3; ++i) {
        line(50);
    }
    proposal().taxPpm = 190'000;
    proposal().taxPerLine = true;
    EXPECT_EQ(cost().totals.front().tax, euro(30));
    EXPECT_EQ(cost().totals.front().gross, euro(180));
    proposal().taxPerLine = false;
    EXPECT_EQ(cost().totals.front().tax, euro(29));
    EXPECT_EQ(cost().totals.front().gross, euro(179));
    EXPECT_FALSE(cost().lines.front().tax.has_value());
}

TEST_F(CostTest, whatStandsInAColumnIsWhatItsFootAddsUpTo) {
    std::mt19937 chance{3};
    for (int trial = 0; trial < 200; ++trial) {
        b.file.lines.clear();
        proposal().taxPpm = static_cast<std::int64_t>(chance() % 300'000);
        proposal().taxPerLine = chance() % 2 == 0;
        for (auto n = chance() % 12; n > 0; --n) {
            line(static_cast<std::int64_t>(chance() % 100'000)).materialsCost =
                euro(static_cast<std::int64_t>(chance() % 5'000));
        }
        Money net = euro(0);
        Money gross = euro(0);
        const OptionCost all = cost();
        for (const LineCost& one : all.lines) {
            net = *sum(net, *one.net);
            gross = one.gross ? *sum(gross, *one.gross) : gross;
        }
        if (all.totals.empty()) {
            continue;
        }
        const CostTotal& foot = all.totals.front();
        EXPECT_EQ(foot.net, net);
        EXPECT_EQ(foot.net, *sum(foot.work, foot.materials));
        EXPECT_EQ(foot.gross, *sum(foot.net, foot.tax));
        if (proposal().taxPerLine) {
            EXPECT_EQ(foot.gross, gross);
        } else {
            EXPECT_EQ(foot.tax, shareOf(net, proposal().taxPpm));
        }
    }
}

TEST_F(CostTest, aLineWithoutAPriceIsItsMinutesAtTheWorkshopsRate) {
    line(0).price.reset();
    b.file.lines.back().minutes = Minutes{90};
    EXPECT_EQ(cost().unpriced, 1U);
    b.file.workshop->hourlyRate = euro(6'000);
    const OptionCost all = cost();
    EXPECT_EQ(all.unpriced, 0U);
    EXPECT_EQ(all.lines.front().work, euro(9'000));
    EXPECT_TRUE(all.lines.front().isByRate);
}

TEST_F(CostTest, isOfItsOptionAloneInWhateverOrderTheLinesCome) {
    for (const std::int64_t cents : {1, 20, 300, 4'000}) {
        line(cents);
    }
    b.line(b.option(proposal(), "B"), "resewing").price = euro(90'000);
    EXPECT_EQ(cost().totals.front().net, euro(4'321));
    std::ranges::reverse(b.file.lines);
    EXPECT_EQ(cost().totals.front().net, euro(4'321));
}

TEST_F(CostTest, currenciesStandSideBySide) {
    line(1'000);
    line(0).price = Money{500, "CHF"};
    ASSERT_EQ(cost().totals.size(), 2U);
    EXPECT_EQ(cost().totals[1].net, (Money{500, "CHF"}));
}

TEST_F(CostTest, aLineOfTwoCurrenciesGoesToBothTotals) {
    line(1'000).materialsCost = Money{500, "CHF"};
    proposal().taxPpm = 190'000;
    for (const bool isPerLine : {true, false}) {
        proposal().taxPerLine = isPerLine;
        const OptionCost all = cost();
        EXPECT_EQ(all.unpriced, 0U);
        ASSERT_EQ(all.totals.size(), 2U);
        EXPECT_EQ(all.totals[0].work, euro(1'000));
        EXPECT_EQ(all.totals[0].gross, euro(1'190));
        EXPECT_EQ(all.totals[1].materials, (Money{500, "CHF"}));
        EXPECT_EQ(all.totals[1].work, (Money{0, "CHF"}));
        EXPECT_EQ(all.totals[1].gross, (Money{595, "CHF"}));
    }
}

// Never quietly out of the sum: what is in no total is counted as such.
TEST_F(CostTest, whatIsBeyondCountingIsSaidToBeInNoTotal) {
    constexpr std::int64_t kHuge = 6'000'000'000'000'000'000;
    line(kHuge);
    line(kHuge);
    EXPECT_EQ(cost().totals.front().gross, euro(kHuge));
    EXPECT_EQ(cost().unpriced, 1U);
    for (const bool isPerLine : {true, false}) {
        proposal().taxPerLine = isPerLine;
        proposal().taxPpm = 900'000; // the tax takes it over the edge
        EXPECT_TRUE(cost().totals.empty());
        EXPECT_EQ(cost().unpriced, 2U);
    }
    b.file.lines.clear();
    line(1'000).materialsCost = euro(std::numeric_limits<std::int64_t>::max());
    EXPECT_EQ(cost().unpriced, 1U);
}

} // namespace
} // namespace headcap::core
