// What each pattern of evidence means: issue of the collation, and Cockerell 1901, ch. II; Gaskell
// on misnumbering. The order among explanations is the trade's: text, marks and fold before
// numbers (TRADE C).
#include "core/collation/break_explanations.h"

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

BreakEvidence turn() {
    return {.before = "K1", .after = "K3"};
}

BreakCause likeliest(const BreakEvidence& at) {
    const auto found = explainBreak(at);
    EXPECT_FALSE(found.empty());
    return found.empty() ? BreakCause::cancel : found.front().cause;
}

TEST(BreakExplanations, saysNothingWhereNothingIsOutOfOrder) {
    BreakEvidence at = turn();
    EXPECT_TRUE(explainBreak(at).empty());
    at.numbersAhead = 0;
    at.textRunsOn = true;
    at.signaturesAhead = 0;
    at.foldShort = 0;
    EXPECT_TRUE(explainBreak(at).empty());
}

TEST(BreakExplanations, aJumpWhereTextAndSignaturesRunOnIsMisnumbering) {
    BreakEvidence at = turn();
    at.numbersAhead = 1;
    at.textRunsOn = true;
    at.signaturesAhead = 0;
    at.foldShort = 0;
    EXPECT_EQ(likeliest(at), BreakCause::misnumbering);
    EXPECT_TRUE(explainBreak(at).front().isSure());
    EXPECT_EQ(
        explainBreak(at).front().sentence,
        "The printer misnumbered from K3 on, and nothing is lost: the numbers jump by a leaf, "
        "the text runs on, the signatures are in order and the fold is whole.");
}

TEST(BreakExplanations, aJumpWhereTextBreaksAndFoldIsShortIsALostLeaf) {
    BreakEvidence at = turn();
    at.numbersAhead = 1;
    at.textRunsOn = false;
    at.foldShort = 1;
    at.signaturesAhead = 1;
    at.carries = "K2 (pp. 131–132)";
    const auto found = explainBreak(at);
    ASSERT_FALSE(found.empty());
    EXPECT_EQ(found.front().cause, BreakCause::leafLacking);
    EXPECT_TRUE(found.front().isSure());
    EXPECT_EQ(
        found.front().sentence,
        "A leaf is lacking between K1 and K3, namely K2 (pp. 131–132): the numbers jump by a leaf, "
        "the text breaks, the fold is short and the signatures pass over as much.");
}

TEST(BreakExplanations, numbersThatRunOnOverABreakAreALeafNotNumberedOrAnotherCopy) {
    BreakEvidence at = turn();
    at.numbersAhead = 0;
    at.textRunsOn = false;
    at.signaturesAhead = 1;
    at.foldShort = 1;
    EXPECT_EQ(likeliest(at), BreakCause::lackingNotNumbered);
    at.foldShort = 0;
    EXPECT_EQ(likeliest(at), BreakCause::fromAnotherCopy);
}

TEST(BreakExplanations, aCatchwordAloneProvesNoLoss) {
    BreakEvidence at = turn();
    at.numbersAhead = 0;
    at.textRunsOn = false;
    at.signaturesAhead = 0;
    at.foldShort = 0;
    EXPECT_EQ(likeliest(at), BreakCause::wrongCatchword);
    for (const BreakExplanation& one : explainBreak(at)) {
        EXPECT_NE(one.cause, BreakCause::leafLacking);
    }
}

TEST(BreakExplanations, numbersAloneAreDoubtfulAndGiveBothReadings) {
    BreakEvidence at = turn();
    at.numbersAhead = 1;
    const auto found = explainBreak(at);
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].cause, BreakCause::misnumbering);
    EXPECT_EQ(found[1].cause, BreakCause::leafLacking);
    EXPECT_FALSE(found[0].isSure());
    EXPECT_FALSE(found[1].isSure());
}

TEST(BreakExplanations, aMarkAloneOutOfOrderIsThePrinters) {
    BreakEvidence at = turn();
    at.numbersAhead = 0;
    at.textRunsOn = true;
    at.signaturesAhead = 2;
    at.foldShort = 0;
    EXPECT_EQ(likeliest(at), BreakCause::missigned);
}

TEST(BreakExplanations, aRepeatedLeafAndOneThatBelongsElsewhere) {
    BreakEvidence at = turn();
    at.textRunsOn = false;
    at.isRepeated = true;
    EXPECT_EQ(likeliest(at), BreakCause::duplicate);
    at = turn();
    at.textRunsOn = false;
    at.numbersAhead = 4;
    at.belongsAfter = "K6";
    EXPECT_EQ(likeliest(at), BreakCause::misbound);
}

TEST(BreakExplanations, aShortFoldWhereAllRunsOnIsTheCancelOfThePrinter) {
    BreakEvidence at = turn();
    at.numbersAhead = 0;
    at.textRunsOn = true;
    at.foldShort = 1;
    EXPECT_EQ(likeliest(at), BreakCause::cancel);
}

TEST(BreakExplanations, doubledNumbersAreNoLeafLacking) {
    BreakEvidence at = turn();
    at.numbersAhead = -1;
    at.textRunsOn = true;
    for (const BreakExplanation& one : explainBreak(at)) {
        EXPECT_EQ(one.cause, BreakCause::misnumbering);
    }
}

} // namespace
} // namespace headcap::core
