#include "core/collation/folds.h"

#include <gtest/gtest.h>

#include "core/collation/collate.h"
#include "core/collation/leaf_expectation.h"

namespace headcap::core {
namespace {

LaidBook book(const char* formula, const char* extent = "") {
    CollateAnswer answer = collate({formula, extent, ""});
    return {answer.makeUp, answer.leaves, answer.numbers, {}};
}

std::size_t leafOf(const LaidBook& in, const char* ref) {
    return locate(in, *parseLeafRef(ref))->leaf;
}

std::string sheetOf(const LaidBook& in, const char* format, const char* ref) {
    std::string text;
    for (const std::size_t leaf : foldsOf(in, format, leafOf(in, ref)).sheet) {
        text += (text.empty() ? "" : " ") + leafText(in, leaf);
    }
    return text;
}

std::vector<std::string> hintsOf(const LaidBook& in, std::vector<const char*> lost,
                                 std::vector<const char*> loose) {
    const auto leaves = [&](const std::vector<const char*>& refs) {
        std::vector<std::size_t> out;
        for (const char* ref : refs) {
            out.push_back(leafOf(in, ref));
        }
        return out;
    };
    std::vector<std::string> said;
    for (const FoldHint& hint : foldHints(in, leaves(lost), leaves(loose))) {
        said.push_back(sentenceOf(in, hint));
    }
    return said;
}

// Sheets quired one in the other: a folio in sixes is three sheets, each one fold; a quarto in
// eights is two (from memory of Gaskell's account of quiring; the arithmetic is computed).
TEST(Folds, saysWhichLeavesAreOneSheet) {
    EXPECT_EQ(sheetOf(book("A⁶"), "2o", "A2"), "A2 A5");
    EXPECT_EQ(sheetOf(book("A⁸"), "4o", "A2"), "A1 A2 A7 A8");
    EXPECT_EQ(sheetOf(book("A⁸"), "4o", "A6"), "A3 A4 A5 A6");
    EXPECT_EQ(sheetOf(book("A⁸"), "8o", "A6"), "A1 A2 A3 A4 A5 A6 A7 A8");
    EXPECT_EQ(sheetOf(book("A⁴"), "8o", "A2"), ""); // half a sheet: with what is not said
    EXPECT_EQ(sheetOf(book("A⁸"), "", "A2"), "");
    EXPECT_EQ(sheetOf(book("A⁸ (-A7)"), "4o", "A2"), "A1 A2 A8");
}

TEST(Folds, everySheetIsOneAndTheSameForAllItsLeaves) {
    for (const char* formula : {"A⁸ B-C⁴ D⁶", "A¹²", "A-B⁸ (-B3)", "A⁸(A2+1)"}) {
        const LaidBook in = book(formula);
        for (const char* format : {"2o", "4o", "8o"}) {
            for (std::size_t leaf = 0; leaf < in.leaves.size(); ++leaf) {
                const auto sheet = foldsOf(in, format, leaf).sheet;
                for (const std::size_t other : sheet) {
                    EXPECT_EQ(foldsOf(in, format, other).sheet, sheet);
                }
            }
        }
    }
}

TEST(Folds, findsTheMiddleOfAGathering) {
    const LaidBook in = book("A⁸ B⁴ (-B2) C⁷");
    const auto middle = foldsOf(in, "8o", leafOf(in, "A1")).middle;
    ASSERT_TRUE(middle);
    EXPECT_EQ(leafText(in, middle->first) + leafText(in, middle->second), "A4A5");
    EXPECT_FALSE(foldsOf(in, "8o", leafOf(in, "B1")).middle);
    EXPECT_FALSE(foldsOf(in, "8o", leafOf(in, "C1")).middle);
}

// TRADE C: where a leaf is loose, look at its conjugate.
TEST(Folds, pointFromOneHalfToTheOtherInBothDirections) {
    const LaidBook in = book("A-C⁸");
    EXPECT_EQ(
        hintsOf(in, {"B2"}, {}),
        std::vector<std::string>{"Leaf B2 is lacking: B7, the other half of its fold, may be "
                                 "loose, or held by a stub or paste alone; see whether it holds."});
    EXPECT_EQ(
        hintsOf(in, {}, {"B7"}),
        std::vector<std::string>{"Leaf B7 is loose: its fold is broken; see whether B2, the other "
                                 "half, is there and holds."});
    EXPECT_TRUE(hintsOf(in, {"B2", "C1", "C8"}, {"B7"}).empty());
}

TEST(LeafExpectation, saysWhatShouldBeOnTheLeaf) {
    const LaidBook in = book("8°: A⁴ B-O⁸", "[8] 1-205 [3]");
    const LeafExpectation c4 = expectationAt(in, "8o", leafOf(in, "C4"));
    EXPECT_EQ(c4.ref, "C4");
    EXPECT_EQ(c4.mark, "C4");
    EXPECT_EQ(c4.recto, "23");
    EXPECT_EQ(c4.verso, "24");
    EXPECT_EQ(c4.place, 4);
    EXPECT_EQ(c4.leaves, 8);
    EXPECT_EQ(c4.conjugate, "C5");
    EXPECT_TRUE(c4.isMiddle);
    EXPECT_EQ(c4.sheet.size(), 7U);
    const LeafExpectation a1 = expectationAt(in, "8o", 0);
    EXPECT_EQ(a1.recto, "");
    EXPECT_TRUE(a1.opensGathering);
    EXPECT_EQ(expectationAt(in, "8o", leafOf(in, "C5")).mark, "");
}

TEST(LeafExpectation, looksForNoMarkOnUnsignedLeaves) {
    const LaidBook in = book("2°: pi² [A]⁴ B⁶ χ1", "");
    EXPECT_EQ(expectationAt(in, "2o", leafOf(in, "π1")).mark, "");
    EXPECT_EQ(expectationAt(in, "2o", leafOf(in, "A1")).mark, "");
    EXPECT_EQ(expectationAt(in, "2o", leafOf(in, "B3")).mark, "B3");
    EXPECT_EQ(expectationAt(in, "2o", leafOf(in, "χ1")).mark, "");
}

} // namespace
} // namespace headcap::core
