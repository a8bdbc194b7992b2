#include "core/collation/copy_statement.h"

#include <gtest/gtest.h>

#include "core/collation/finding_words.h"
#include "core/collation/walk_differences.h"
#include "core/collation/walk_entries.h"
#include "tests/support/fixed_clock.h"

namespace headcap::core {
namespace {

class CopyStatementTest : public testing::Test {
protected:
    tests::FixedClock clock{*instantFromIso("2031-04-02T10:00:00Z")};
    IdSource ids{clock, 13};
    Id<Job> job = ids.next<Job>();
    Person orrin{.id = ids.next<Person>(), .name = "Orrin Vale"};
    CopyRecords copy = blank();

    CopyRecords blank() {
        CopyRecords made;
        made.formula = "8°: A⁴ B-O⁸";
        made.extent = "[8] 1-205 [3] p.";
        made.people = {orrin};
        return made;
    }
    CollationFinding& find(CollationKind kind, const char* place) {
        CollationFinding made{.id = ids.next<CollationFinding>(), .job = job};
        made.kind = kind;
        made.place = place;
        copy.findings.push_back(made);
        return copy.findings.back();
    }
    void plate(const char* name, PlatePresence presence) {
        CalledPlate made{.id = ids.next<CalledPlate>(), .job = job};
        made.name = name;
        made.presence = presence;
        copy.plates.push_back(made);
    }
    // Gone through gathering by gathering; the first leaf by leaf.
    void walkThrough(const char* upTo = "") {
        Collation collation{.id = ids.next<Collation>(), .job = job};
        collation.formula = copy.formula;
        collation.extent = copy.extent;
        const WalkPen pen{.ids = ids, .now = clock.now(), .who = orrin.id};
        const Walk walk = beginWalk(job, {}, collation, WalkKind::againstMakeUp, pen);
        copy.walks.push_back(walk);
        const WalkedBook walked = walkedBook(copy.formula, copy.extent);
        while (const auto here = stateOf(walked.book, entriesOf(walk, copy.entries)).here) {
            const auto entry = *here < 4 ? leafAsExpected(walk, walked.book, *here, pen)
                                         : restAsExpected(walk, walked.book, *here, pen);
            if (entry.gathering == upTo) {
                return;
            }
            copy.entries.push_back(entry);
        }
    }
};

// 108 leaves: A4 B–O8, published (Massachusetts Historical Society, as in TRADE F).
TEST_F(CopyStatementTest, aPerfectCopyGoneThroughIsSaidToBeSo) {
    walkThrough();
    EXPECT_EQ(statementOf(copy), "8°: A⁴ B–O⁸. Nothing lacking or out of order. 108 leaves called "
                                 "for, 108 present.");
    EXPECT_EQ(methodOf(copy, clock), "Gone through by Orrin Vale, 2 April 2031: gathering A leaf "
                                     "by leaf; gatherings B–O passed whole.");
    EXPECT_EQ(notExamined(copy), "");
    EXPECT_EQ(wordToOwner(copy), "");
}

TEST_F(CopyStatementTest, aCopyNotGoneThroughIsNotCalledPerfect) {
    EXPECT_EQ(statementOf(copy), "8°: A⁴ B–O⁸. Not gone through. 108 leaves called for.");
    EXPECT_FALSE(tallyOf(copy).leavesPresent());
    walkThrough("N");
    EXPECT_EQ(statementOf(copy), "8°: A⁴ B–O⁸. No departure found so far. Not looked at: "
                                 "gatherings N–O. 108 leaves called for.");
    EXPECT_EQ(notExamined(copy), "gatherings N–O");
}

TEST_F(CopyStatementTest, whatWasTypedOfHowItWasEstablishedStaysBesideTheWalks) {
    EXPECT_EQ(methodBeside("", "Gone through."), "Gone through.");
    EXPECT_EQ(methodBeside("Against the list of charts.", "Gone through."),
              "Against the list of charts. Gone through.");
    EXPECT_EQ(methodBeside("Gone through.", "Gone through. Gone through by Ada."),
              "Gone through. Gone through by Ada.");
    EXPECT_EQ(methodBeside("By hand. Gone through.", "Gone through."), "By hand. Gone through.");
}

TEST_F(CopyStatementTest, namesEveryDepartureTheWorstFirst) {
    auto& number = find(CollationKind::misnumbered, "C3");
    number.found = "12";
    number.expected = "21";
    find(CollationKind::loose, "D7");
    find(CollationKind::lacking, "K2");
    find(CollationKind::lacking, "K3");
    find(CollationKind::facsimile, "K5");
    auto& place = find(CollationKind::misbound, "E3");
    place.found = "after E5";
    place.expected = "after E2";
    find(CollationKind::other, "F1").note = "a child's drawing in the margin";
    EXPECT_EQ(statementOf(copy),
              "8°: A⁴ B–O⁸. Lacks K2–K3; D7 loose; E3 misbound (after E5; belongs after E2); K5 in "
              "facsimile; C3 misnumbered 12 for 21; F1: a child's drawing in the margin. One move "
              "puts the leaves in order: E3 goes after E2. 108 leaves called for, 106 present, 2 "
              "lacking, 1 "
              "supplied.");
}

// ILAB Code §3: 54 plates called for, 52 present.
TEST_F(CopyStatementTest, countsWhatShouldBeThereBesideWhatIs) {
    plate("1", PlatePresence::present);
    plate("2", PlatePresence::lacking);
    plate("3", PlatePresence::supplied);
    plate("4", PlatePresence::notLookedFor);
    walkThrough();
    EXPECT_EQ(tallyText(tallyOf(copy)),
              "108 leaves called for, 108 present; 4 plates called for, 1 present, 1 lacking, 1 "
              "supplied, 1 not looked for");
    EXPECT_EQ(notExamined(copy), "1 plate");
}

// Plates lie outside the signatures (DCRMR 6.215.427): the leaf that one stands at is no plate.
TEST_F(CopyStatementTest, aFoldedPlateStandsAtALeaf) {
    find(CollationKind::foldedPlate, "B2");
    EXPECT_NE(statementOf(copy).find("A folded plate at B2."), std::string::npos);
    copy.findings.back().note = "map, facing B2r";
    EXPECT_NE(statementOf(copy).find("A folded plate at B2 (map, facing B2r)."), std::string::npos);
    EXPECT_EQ(wordsOf(copy.findings.back()), "a folded plate (map, facing B2r)");
}

TEST_F(CopyStatementTest, aLeafLackingAndSuppliedIsCountedInBothColumnsOnce) {
    find(CollationKind::lacking, "K2");
    Facsimile leaf{.id = ids.next<Facsimile>(), .job = job};
    leaf.place = "K2";
    copy.facsimiles.push_back(leaf);
    const CopyTally tally = tallyOf(copy);
    EXPECT_EQ(tally.leavesLacking, 1);
    EXPECT_EQ(tally.leavesSupplied, 1);
    EXPECT_EQ(tally.leavesPresent(), 107);
}

TEST_F(CopyStatementTest, theOwnerIsToldWhatIsGraveAndWasSoOnArrival) {
    find(CollationKind::lacking, "K2");
    find(CollationKind::torn, "B1");
    find(CollationKind::tornWithLoss, "B2").onArrival = false;
    EXPECT_EQ(wordToOwner(copy), "Collated as it came, before anything was taken down, this copy "
                                 "shows: lacks K2.");
}

TEST_F(CopyStatementTest, whereTwoWalksDoNotAgreeBothAreHeard) {
    const Person ada{.id = ids.next<Person>(), .name = "Ada Finch"};
    copy.people.push_back(ada);
    walkThrough();
    EXPECT_TRUE(walkDifferences(copy).empty());
    Collation collation{.id = ids.next<Collation>(), .job = job};
    collation.formula = copy.formula;
    collation.extent = copy.extent;
    const WalkPen pen{.ids = ids, .now = clock.now(), .who = ada.id};
    const Walk walk = beginWalk(job, {}, collation, WalkKind::againstMakeUp, pen);
    copy.walks.push_back(walk);
    const WalkedBook walked = walkedBook(copy.formula, copy.extent);
    copy.entries.push_back(leafAsExpected(walk, walked.book, 4, pen));
    EXPECT_TRUE(walkDifferences(copy).empty());
    const LeafReading read{.recto = "12"};
    const auto found = findingAt(walk, walked.book, 5, CollationKind::misnumbered,
                                 expectationAt(walked.book, walked.format, 5), read, pen);
    copy.findings.push_back(found.finding);
    copy.entries.push_back(found.entry);
    copy.entries.push_back(
        leafRead(walk, walked.book, 6, {.recto = "7", .verso = "8"}, false, pen));
    EXPECT_EQ(walkDifferences(copy),
              (std::vector<std::string>{
                  "Leaf B2: as expected for Orrin Vale; misnumbered 12 for 3 for Ada Finch.",
                  "Leaf B3: as expected for Orrin Vale; recto 7 and verso 8 for Ada Finch."}));
}

TEST_F(CopyStatementTest, aBookWithoutAFormulaStillHasItsDepartures) {
    copy.formula = "";
    copy.extent = "";
    find(CollationKind::lacking, "the title");
    EXPECT_EQ(statementOf(copy), "Lacks the title.");
    EXPECT_FALSE(tallyOf(copy).leavesCalledFor);
}

} // namespace
} // namespace headcap::core
