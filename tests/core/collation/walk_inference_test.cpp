#include "core/collation/walk_inference.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/collation/collate.h"
#include "core/collation/formula.h"
#include "core/collation/leaf_expectation.h"
#include "core/collation/walk_entries.h"
#include "tests/support/fixed_clock.h"

namespace headcap::core {
namespace {

class WalkInferenceTest : public testing::Test {
protected:
    tests::FixedClock clock{*instantFromIso("2031-04-02T10:00:00Z")};
    IdSource ids{clock, 17};
    Walk walk =
        beginWalk(ids.next<Job>(), {}, {.id = ids.next<Collation>(), .job = ids.next<Job>()},
                  WalkKind::inferring, pen());
    std::vector<WalkEntry> entries;

    WalkPen pen() { return {.ids = ids, .now = clock.now(), .who = {}}; }
    void leaf(const LeafReading& reading) {
        entries.push_back(nextLeafRead(walk, entries.size(), reading, pen()));
    }
    // Types what a printed book of this make-up shows: marks and numbers, without those given.
    void type(const char* formula, const char* extent, std::vector<std::string> without = {}) {
        const WalkedBook book = walkedBook(formula, extent);
        for (std::size_t i = 0; i < book.book.leaves.size(); ++i) {
            const LeafExpectation at = expectationAt(book.book, book.format, i);
            if (std::ranges::find(without, at.ref) == without.end()) {
                leaf({.signature = at.mark, .recto = at.recto, .verso = at.verso});
            }
        }
    }
    InferredWalk infer() { return inferFrom(entries); }
};

TEST_F(WalkInferenceTest, findsTheMakeUpOfABookFromItsMarksAndNumbers) {
    type("A-M⁸", "192 p.");
    const InferredWalk found = infer();
    EXPECT_EQ(found.leaves, 96U);
    EXPECT_EQ(found.diagnosis.formula, "A-M⁸");
    EXPECT_EQ(found.diagnosis.extent, "192 p.");
    EXPECT_EQ(found.gatheringsSure, 12);
    EXPECT_TRUE(found.doubts.empty());
    EXPECT_TRUE(found.diagnosis.findings.empty());
}

// What is typed and inferred reads as the same make-up as the one it was typed from.
TEST_F(WalkInferenceTest, whatIsInferredReadsAsTheMakeUpItWasTypedFrom) {
    for (const char* formula : {"A-F⁴", "A-2C⁴", "a-e⁸", "A-Z⁶ 2A-2F⁶"}) {
        entries.clear();
        type(formula, "");
        EXPECT_EQ(readFormula(infer().diagnosis.formula).makeUp, readFormula(formula).makeUp)
            << formula << " became " << infer().diagnosis.formula;
    }
}

TEST_F(WalkInferenceTest, namesTheLeafThatIsLackingByItsLeafNotARow) {
    type("A-M⁸", "192 p.", {"D3"});
    const InferredWalk found = infer();
    ASSERT_EQ(found.diagnosis.findings.size(), 1U);
    EXPECT_EQ(found.diagnosis.findings.front().kind, LeafFindingKind::leafLacking);
    const std::string& said = found.diagnosis.findings.front().sentence;
    EXPECT_NE(said.find("(D3) after leaf 26 verso"), std::string::npos) << said;
    EXPECT_EQ(said.find("row"), std::string::npos) << said;
    EXPECT_EQ(found.diagnosis.formula, "A-M⁸ (-D3)");
}

TEST_F(WalkInferenceTest, saysWhatItIsNotSureOf) {
    type("A-C⁸", "");
    for (int i = 0; i < 5; ++i) {
        leaf({.signature = i == 0 ? "D" : ""});
    }
    type("E-H⁸", "");
    const InferredWalk found = infer();
    EXPECT_EQ(found.leaves, 61U);
    EXPECT_FALSE(found.doubts.empty() && found.diagnosis.findings.empty());
}

TEST_F(WalkInferenceTest, aReadingAcrossTheBreakCountsAsACatchwordDoes) {
    type("A-D⁸", "");
    entries[10].runsOn = TextRunsOn::no;
    const auto broken = infer();
    entries[10].runsOn = TextRunsOn::yes;
    EXPECT_TRUE(infer().diagnosis.findings.empty());
    EXPECT_FALSE(broken.diagnosis.findings.empty());
}

TEST_F(WalkInferenceTest, nothingTypedIsNothingInferred) {
    EXPECT_EQ(infer().leaves, 0U);
    EXPECT_TRUE(infer().diagnosis.formula.empty());
    leaf({});
    EXPECT_EQ(infer().leaves, 1U);
}

} // namespace
} // namespace headcap::core
