#include "core/collation/walk.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/collation/folds.h"
#include "core/collation/walk_entries.h"
#include "tests/support/fixed_clock.h"

namespace headcap::core {
namespace {

class WalkTest : public testing::Test {
protected:
    tests::FixedClock clock{*instantFromIso("2031-04-02T10:00:00Z")};
    IdSource ids{clock, 7};
    WalkedBook walked = walkedBook("8°: A⁴ B-D⁸", "[8] 1-48 p.");
    const LaidBook& book = walked.book;
    Walk walk = begin();
    std::vector<WalkEntry> entries;

    Walk begin() {
        Collation collation{.id = ids.next<Collation>(), .job = ids.next<Job>()};
        collation.formula = "8°: A⁴ B-D⁸";
        collation.extent = "[8] 1-48 p.";
        return beginWalk(collation.job, {}, collation, WalkKind::againstMakeUp, pen());
    }
    WalkPen pen() { return {.ids = ids, .now = clock.now(), .who = {}}; }
    std::size_t leaf(const char* ref) { return locate(book, *parseLeafRef(ref))->leaf; }
    LeafExpectation expected(const char* ref) {
        return expectationAt(book, walked.format, leaf(ref));
    }
    WalkState state() { return stateOf(book, entries); }
    std::string here() {
        const auto at = state().here;
        return at ? leafText(book, *at) : "none";
    }
    void pass() { entries.push_back(leafAsExpected(walk, book, *state().here, pen())); }
    void passRest() { entries.push_back(restAsExpected(walk, book, *state().here, pen())); }
};

TEST_F(WalkTest, beginsAtTheFirstLeafAndGoesOnLeafByLeaf) {
    EXPECT_EQ(here(), "A1");
    pass();
    EXPECT_EQ(here(), "A2");
    EXPECT_EQ(state().singly, 1U);
}

TEST_F(WalkTest, theRestOfAGatheringGoesWithOneEntryAndIsSaidToHaveGoneWhole) {
    pass();
    passRest();
    EXPECT_EQ(entries.size(), 2U);
    EXPECT_EQ(here(), "B1");
    EXPECT_EQ(state().leaves[0].looked, Looked::singly);
    EXPECT_EQ(state().leaves[1].looked, Looked::whole);
    EXPECT_EQ(state().leaves[3].looked, Looked::whole);
    EXPECT_EQ(state().leaves[4].looked, Looked::no);
}

TEST_F(WalkTest, isTakenUpAtTheSameLeafHoweverLongAfter) {
    pass();
    passRest();
    pass();
    const std::string left = here();
    clock.pass(std::chrono::hours{24 * 40});
    std::ranges::reverse(entries); // a store gives them by their place, not by their making
    EXPECT_EQ(stateOf(book, entriesOf(walk, entries)).here, leaf(left.c_str()));
    EXPECT_EQ(left, "B2");
}

TEST_F(WalkTest, whatWasSkippedIsComeBackToAtTheEnd) {
    entries.push_back(leafAsExpected(walk, book, leaf("A1"), pen()));
    for (const char* first : {"B1", "C1", "D1"}) {
        entries.push_back(restAsExpected(walk, book, leaf(first), pen()));
    }
    EXPECT_EQ(here(), "A2");
    passRest();
    EXPECT_EQ(here(), "none");
    EXPECT_EQ(state().notLooked, 0U);
}

TEST_F(WalkTest, lookingAgainSinglyCountsForMoreThanPassingWhole) {
    entries.push_back(restAsExpected(walk, book, leaf("B1"), pen()));
    entries.push_back(leafAsExpected(walk, book, leaf("B3"), pen()));
    EXPECT_EQ(state().leaves[leaf("B3")].looked, Looked::singly);
    entries.push_back(restAsExpected(walk, book, leaf("B1"), pen()));
    EXPECT_EQ(state().leaves[leaf("B3")].looked, Looked::singly);
}

TEST_F(WalkTest, takingBackAnEntryLeavesTheLeafToBeLookedAtAgain) {
    pass();
    pass();
    const std::string at = here();
    pass();
    entries.pop_back();
    EXPECT_EQ(here(), at);
}

TEST_F(WalkTest, saysWhatWasLookedAtAndHow) {
    for (int i = 0; i < 4; ++i) {
        pass();
    }
    passRest();
    passRest();
    EXPECT_EQ(coverageText(book, coverageOf({state()}, book.leaves.size())),
              "gathering A leaf by leaf; gatherings B–C passed whole; gathering D not looked at");
    passRest();
    for (std::size_t i = 0; i < book.leaves.size(); ++i) {
        entries.push_back(leafAsExpected(walk, book, i, pen()));
    }
    EXPECT_EQ(coverageText(book, coverageOf({state()}, book.leaves.size())),
              "every leaf looked at singly");
    EXPECT_EQ(coverageText(book, coverageOf({}, book.leaves.size())), "no leaf looked at");
}

TEST_F(WalkTest, twoWalksAreKeptApartAndCompared) {
    Walk other = begin();
    std::vector<WalkEntry> all{leafAsExpected(walk, book, 0, pen()),
                               leafAsExpected(other, book, 0, pen()),
                               leafAsExpected(walk, book, 1, pen()),
                               leafRead(other, book, 1, {.recto = "7"}, false, pen()),
                               leafRead(other, book, 2, {.recto = "7"}, false, pen())};
    const auto mine = entriesOf(walk, all);
    const auto theirs = entriesOf(other, all);
    EXPECT_EQ(mine.size(), 2U);
    EXPECT_EQ(theirs.size(), 3U);
    EXPECT_EQ(disagreements(stateOf(book, mine), stateOf(book, theirs)),
              std::vector<std::size_t>{1});
}

TEST_F(WalkTest, aFindingOfEveryKindCarriesItsPlaceAndItsEntry) {
    for (std::size_t kind = 0; kind < EnumNames<CollationKind>::kNames.size(); ++kind) {
        const WalkFinding made = findingAt(walk, book, leaf("C3"), static_cast<CollationKind>(kind),
                                           expected("C3"), {}, pen());
        EXPECT_EQ(made.finding.place, "C3");
        EXPECT_EQ(made.entry.place, "C3");
        EXPECT_EQ(made.entry.gathering, "C");
        EXPECT_EQ(made.entry.finding, made.finding.id);
        EXPECT_FALSE(made.entry.asExpected);
        EXPECT_EQ(made.finding.decision, CollationDecision::undecided);
    }
}

TEST_F(WalkTest, whatWasReadStandsInTheFindingBesideWhatShouldBe) {
    const auto number = findingAt(walk, book, leaf("C3"), CollationKind::misnumbered,
                                  expected("C3"), {.recto = "12"}, pen());
    EXPECT_EQ(number.finding.found, "12");
    EXPECT_EQ(number.finding.expected, "21");
    const auto mark = findingAt(walk, book, leaf("C3"), CollationKind::missigned, expected("C3"),
                                {.signature = "C5"}, pen());
    EXPECT_EQ(mark.finding.found, "C5");
    EXPECT_EQ(mark.finding.expected, "C3");
    const auto place =
        findingAt(walk, book, leaf("C3"), CollationKind::misbound, expected("C3"), {}, pen());
    EXPECT_EQ(place.finding.expected, "after C2");
}

TEST_F(WalkTest, aReadingDiffersByValueNotByForm) {
    const LeafExpectation at = expected("C3");
    const auto differs = [&](const LeafReading& reading) {
        return differenceOf(reading, at).any();
    };
    EXPECT_FALSE(differs({}));
    EXPECT_FALSE(differs({.signature = "C 3", .recto = "21", .verso = "(22)"}));
    EXPECT_FALSE(differs({.signature = "C iij"}));
    EXPECT_TRUE(differs({.signature = "C5"}));
    EXPECT_TRUE(differs({.signature = "D3"}));
    EXPECT_TRUE(differs({.recto = "12"}));
    EXPECT_TRUE(differs({.verso = "23"}));
    EXPECT_TRUE(differs({.runsOn = TextRunsOn::no}));
    const WalkedBook doubled = walkedBook("2A-2B⁸", "");
    const LeafExpectation aa = expectationAt(doubled.book, "8o", 2);
    EXPECT_EQ(aa.ref, "2A3");
    EXPECT_FALSE(differenceOf({.signature = "Aa iij"}, aa).any());
    EXPECT_FALSE(differenceOf({.signature = "2A3"}, aa).any());
    EXPECT_FALSE(differenceOf({.signature = "Aa"}, expectationAt(doubled.book, "8o", 0)).any());
}

TEST_F(WalkTest, aBookWhoseMakeUpIsUnknownGivesNoLeafToWalk) {
    const WalkedBook none = walkedBook("", "");
    EXPECT_FALSE(stateOf(none.book, {}).here);
}

} // namespace
} // namespace headcap::core
