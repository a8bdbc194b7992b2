#include "core/collation/extent.h"

#include <string>

#include <gtest/gtest.h>

#include "core/collation/collate.h"

namespace headcap::core {
namespace {

struct Stated {
    const char* extent;
    int pages;
    int leaves;
    const char* rule;
};

class ExtentText : public testing::TestWithParam<Stated> {};

TEST_P(ExtentText, isCounted) {
    const Extent extent = readExtent(GetParam().extent);
    EXPECT_TRUE(extent.problems.empty()) << GetParam().extent;
    EXPECT_EQ(pageTotal(extent), GetParam().pages) << GetParam().extent << ", " << GetParam().rule;
    EXPECT_EQ(leafTotal(extent), GetParam().leaves) << GetParam().extent << ", " << GetParam().rule;
}

INSTANTIATE_TEST_SUITE_P(
    Rules, ExtentText,
    testing::Values(
        Stated{"[16], 384, [8] p.", 408, 204, "a count in brackets, last numbers without"},
        Stated{"xii, 211, [1] leaves", 448, 224, "roman, leaves"},
        Stated{"[2], 112 [i.e. 224], [8] p., 3 folded plates", 234, 117, "a true count"},
        Stated{"[2], 40 p.", 42, 21, "DCRMR 6.21.4225.2"},
        Stated{"[2], 5-40 p.", 38, 19, "DCRMR 6.21.4225.2"},
        Stated{"xvi, 17-328 p.", 328, 164, "numbers run on when the style changes"},
        Stated{"xii, [1], 35, 35, [1] p.", 84, 42, "duplicates on facing pages"},
        Stated{"[4] 1-32 35-154 [=152] [16]", 172, 86, "Noble & Whitesell: the true count"},
        Stated{"[1-2] 3-62 [63-64]", 64, 32, "DCRMR 6.215.44.9: inferred numbers"},
        Stated{"[8] 1-205 [3]", 216, 108, "MHS, The Beehive: [8] alone is a count"},
        Stated{"[4], CXXII leaves ; 31 cm (fol.)", 252, 126, "Folger, 2016"},
        Stated{"564 [that is, 56] leaves", 112, 56, "DCRMR correction"},
        Stated{"[12], 50, 49-191 [i.e. 190], [2] p.", 206, 103, "A00602: a corrected last number"},
        Stated{"Cxx [i.e. 240] p.", 240, 120, "120 folios"},
        Stated{"[11] p.", 11, 6, "an odd total leaves a side unrecorded"},
        Stated{"[8], lxxxxiii, lxxxiii-CCCxlvii leaves : ill.", 732, 366,
               "A04386, its leaves stated"},
        Stated{"236; 266 p.", 502, 251, "two volumes"},
        Stated{"[8], 592 p., [1] leaf of plates : port.", 600, 300, "plates stand apart"},
        Stated{"[4], 52 p., XXIV plates", 56, 28, "plates numbered in roman stand apart"},
        Stated{"xvi, 40 p., ii folded plates", 56, 28, "so do folded ones"},
        Stated{"p. 1283-1286.", 4, 2, "the unit first"},
        Stated{"[2], 441-450 [i.e. 12 p.)", 12, 6, "the sum of the sequences, said again"}));

// ILAB Code §3 counts them beside the leaves: how many are called for.
TEST(ExtentPlates, areCountedHoweverTheyAreNumbered) {
    for (const auto& [extent, plates] :
         {std::pair{"[4], 52 p., XXIV plates", 24}, std::pair{"xvi, 40 p., ii folded plates", 2},
          std::pair{"[8], 592 p., [1] leaf of plates", 1}, std::pair{"[8], 148 p., V plates", 5},
          std::pair{"xxiv, 200 p.", 0}, std::pair{"xvi leaves", 0}}) {
        EXPECT_EQ(readExtent(extent).plates, plates) << extent;
    }
}

std::string numberAt(const CollateAnswer& answer, const char* ref, bool verso) {
    for (std::size_t i = 0; i < answer.leaves.size(); ++i) {
        if (toText(LeafRef(refOf(answer.makeUp, answer.leaves[i]))) == ref) {
            const auto& laid = verso ? answer.numbers[i].verso : answer.numbers[i].recto;
            return laid ? toText(*laid) : "none";
        }
    }
    return "no such leaf";
}

TEST(Numbers, areLaidAlongTheLeaves) {
    const CollateAnswer answer = collate({"A⁴ B-O⁸", "[8] 1-205 [3]", ""});
    EXPECT_EQ(numberAt(answer, "A4", true), "none");
    EXPECT_EQ(numberAt(answer, "B1", false), "1");
    EXPECT_EQ(numberAt(answer, "C4", false), "23");
    EXPECT_EQ(numberAt(answer, "O7", false), "205");
    EXPECT_EQ(numberAt(answer, "O7", true), "none");
    const CollateAnswer bowers = collate({"8vo: A-H⁴", "[1-2] 3-62 [63-64]", ""});
    EXPECT_EQ(numberAt(bowers, "A1", false), "[1]");
    EXPECT_EQ(numberAt(bowers, "A2", false), "3");
    const CollateAnswer folios = collate({"2°: a⁴ A-O⁸ P¹⁰", "[4], CXXII leaves", ""});
    EXPECT_EQ(numberAt(folios, "A1", false), "I");
    EXPECT_EQ(numberAt(folios, "P10", false), "CXXII");
    EXPECT_EQ(numberAt(folios, "P10", true), "none");
}

TEST(Numbers, areNotLaidWhereTheTwoDisagree) {
    const CollateAnswer answer = collate({"A-B⁴", "[2], 11 p.", ""});
    EXPECT_EQ(numberAt(answer, "A2", false), "none");
    EXPECT_EQ(answer.extent->difference, -1);
    EXPECT_NE(answer.extent->explanation.find("blank leaf"), std::string::npos);
}

TEST(Comparison, namesTheLikelyCause) {
    const auto cause = [](const char* formula, const char* extent) {
        return collate({formula, extent, ""}).extent->explanation;
    };
    EXPECT_NE(cause("A-F⁸", "48 p.").find("one side"), std::string::npos);
    EXPECT_NE(cause("A-F⁸", "[112] p.").find("whole gathering of 8"), std::string::npos);
    EXPECT_NE(cause("A⁸ B⁸(-B8, blank?)", "[32] p.").find("perhaps blank"), std::string::npos);
    EXPECT_NE(cause("A-C⁴ D⁴ (last leaf blank)", "[30] p.").find("said to be blank"),
              std::string::npos);
}

} // namespace
} // namespace headcap::core
