#include "core/collation/walk_evidence.h"

#include <gtest/gtest.h>

#include "core/collation/bound_order.h"
#include "core/collation/folds.h"
#include "tests/support/fixed_clock.h"

namespace headcap::core {
namespace {

class WalkEvidenceTest : public testing::Test {
protected:
    tests::FixedClock clock{*instantFromIso("2031-04-02T10:00:00Z")};
    IdSource ids{clock, 11};
    WalkedBook walked = walkedBook("8°: A⁴ B-D⁸", "[8] 1-48 p.");
    Walk walk =
        beginWalk(ids.next<Job>(), {}, {.id = ids.next<Collation>(), .job = ids.next<Job>()},
                  WalkKind::againstMakeUp, pen());
    std::vector<WalkEntry> entries;
    std::vector<CollationFinding> findings;

    WalkPen pen() { return {.ids = ids, .now = clock.now(), .who = {}}; }
    std::size_t leaf(const char* ref) { return locate(walked.book, *parseLeafRef(ref))->leaf; }
    void read(const char* ref, const LeafReading& reading) {
        entries.push_back(leafRead(walk, walked.book, leaf(ref), reading, false, pen()));
    }
    void pass(const char* ref) {
        entries.push_back(leafAsExpected(walk, walked.book, leaf(ref), pen()));
    }
    BreakEvidence at(const char* ref, const LeafReading& reading) {
        return evidenceAt(walked, entries, findings, leaf(ref), reading);
    }
    std::vector<BreakExplanation> explain(const char* ref, const LeafReading& reading) {
        return explainBreak(at(ref, reading));
    }
    CollationFinding finding(CollationKind kind, const char* place, const char* found = "") {
        CollationFinding made{.id = ids.next<CollationFinding>(), .job = walk.job};
        made.kind = kind;
        made.place = place;
        made.found = found;
        return made;
    }
    std::vector<std::string> moves(const std::vector<CollationFinding>& misbound) {
        std::vector<std::string> said;
        for (const LeafMove& move : movesFor(walked.book, misbound)) {
            said.push_back(sentenceOf(walked.book, move));
        }
        return said;
    }
};

TEST_F(WalkEvidenceTest, aLeafWhoseNumberAndMarkAreThoseOfTheNextIsPrecededByALack) {
    const auto found = explain("C2", {.signature = "C3", .recto = "21", .runsOn = TextRunsOn::no});
    ASSERT_FALSE(found.empty());
    EXPECT_EQ(found.front().cause, BreakCause::leafLacking);
    EXPECT_EQ(found.front().sentence.substr(0, 65),
              "A leaf is lacking between C1 and C3, namely C2 (pp. 19–20): the");
}

TEST_F(WalkEvidenceTest, aNumberAloneWhereTheTextRunsOnIsThePrinters) {
    const auto found = explain("C2", {.recto = "21", .runsOn = TextRunsOn::yes});
    ASSERT_FALSE(found.empty());
    EXPECT_EQ(found.front().cause, BreakCause::misnumbering);
}

TEST_F(WalkEvidenceTest, theCatchwordReadOnTheLeafBeforeIsMetAsAReaderMeetsIt) {
    read("C1", {.catchword = "vpon"});
    EXPECT_EQ(catchwordDue(stateOf(walked.book, entries), leaf("C2")), "vpon");
    EXPECT_EQ(at("C2", {.firstWords = "Upon the"}).textRunsOn, true);
    EXPECT_EQ(at("C2", {.firstWords = "gardens"}).textRunsOn, false);
    EXPECT_FALSE(at("C2", {}).textRunsOn);
}

// What was read on both sides of a leaf is where the numbers have come to; a single number that
// differs moves nothing (misprinting 348 as 48, Noble & Whitesell).
TEST_F(WalkEvidenceTest, numbersThatHaveJumpedAreExpectedToRunOn) {
    read("C2", {.recto = "21", .verso = "22"});
    EXPECT_EQ(expectationInWalk(walked, entries, leaf("C3")).recto, "23");
    EXPECT_EQ(expectationInWalk(walked, entries, leaf("C2")).recto, "19");
    entries.clear();
    read("C2", {.recto = "91"});
    EXPECT_EQ(expectationInWalk(walked, entries, leaf("C3")).recto, "21");
    read("C3", {.recto = "93"});
    EXPECT_EQ(expectationInWalk(walked, entries, leaf("C4")).recto, "95");
}

TEST_F(WalkEvidenceTest, aJumpDoesNotReachBackOverASecondNumbering) {
    const WalkedBook two = walkedBook("A-B⁸", "16, ²1-16 p.");
    const Walk through = walk;
    std::vector<WalkEntry> seen{
        leafRead(through, two.book, 2, {.recto = "7", .verso = "8"}, false, pen())};
    EXPECT_EQ(numberShift(two.book, seen, 3), 2);
    EXPECT_EQ(numberShift(two.book, seen, 8), 0);
}

TEST_F(WalkEvidenceTest, aLeafMetBeforeIsOneBoundInTwice) {
    pass("C1");
    pass("C2");
    const auto found = explain("C3", {.signature = "C2", .recto = "19", .runsOn = TextRunsOn::no});
    ASSERT_FALSE(found.empty());
    EXPECT_EQ(found.front().cause, BreakCause::duplicate);
}

// TRADE C: where a leaf is lost, the other half of its fold is loose; a fold that is short speaks
// for a loss, and one that is whole against it.
TEST_F(WalkEvidenceTest, whatLacksOrIsLooseSaysThatTheFoldIsShort) {
    const LeafReading jump{.recto = "21"};
    EXPECT_FALSE(at("C2", jump).foldShort);
    findings = {finding(CollationKind::loose, "C7")}; // of one fold with C2
    EXPECT_EQ(at("C2", jump).foldShort, 1);
    EXPECT_EQ(explain("C2", jump).front().cause, BreakCause::leafLacking);
    findings = {finding(CollationKind::lacking, "C2")};
    EXPECT_EQ(at("C2", jump).foldShort, 1);
    // What lacks elsewhere in the gathering is no evidence here.
    findings = {finding(CollationKind::lacking, "C8")};
    EXPECT_FALSE(at("C2", jump).foldShort);
    // Nor is a misprint that would take more leaves than the gathering has.
    EXPECT_FALSE(at("C2", {.recto = "219"}).foldShort);
    EXPECT_FALSE(at("C3", {}).foldShort);
}

TEST_F(WalkEvidenceTest, aGatheringSeenToItsEndWithAllItsLeavesFastIsWhole) {
    entries.push_back(restAsExpected(walk, walked.book, leaf("C1"), pen()));
    EXPECT_EQ(at("C2", {.recto = "21"}).foldShort, 0);
    EXPECT_EQ(explain("C2", {.recto = "21"}).front().cause, BreakCause::misnumbering);
    findings = {finding(CollationKind::loose, "C5")};
    EXPECT_FALSE(at("C2", {.recto = "21"}).foldShort);
}

TEST_F(WalkEvidenceTest, misboundLeavesGoBackByTheFewestMoves) {
    EXPECT_EQ(moves({finding(CollationKind::misbound, "C3", "after C5")}),
              std::vector<std::string>{"Leaf C3 goes after C2."});
    EXPECT_EQ(moves({finding(CollationKind::misbound, "D1–D8", "before B1")}),
              std::vector<std::string>{"Leaves D1–D8 go after C8."});
    EXPECT_EQ(moves({finding(CollationKind::misbound, "C5", "before C3"),
                     finding(CollationKind::lacking, "C4")}),
              std::vector<std::string>{"Leaf C5 goes after C3."});
    EXPECT_TRUE(moves({finding(CollationKind::misbound, "C3", "somewhere")}).empty());
}

} // namespace
} // namespace headcap::core
