// The statements that catalogues really hold and that readers stumble on, each named by its record
// (ESTC, via earlyprint/epmetadata) or its publication, with the behaviour asked for.
#include <algorithm>
#include <string>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/collation/collate.h"

namespace headcap::core {
namespace {

using testing::HasSubstr;

int leaves(const char* formula, const char* extent = "") {
    return collate({formula, extent, ""}).leafTotal.value_or(-1);
}

bool assumes(const CollateAnswer& answer, Ground from, const std::string& words) {
    return std::any_of(answer.assumptions.begin(), answer.assumptions.end(),
                       [&](const Assumption& one) {
                           return one.from == from && one.what.find(words) != one.what.npos;
                       });
}

std::string refs(const CollateAnswer& answer) {
    std::string out;
    for (const Leaf& leaf : answer.leaves) {
        out += (out.empty() ? "" : " ") + toText(LeafRef(refOf(answer.makeUp, leaf)));
    }
    return out;
}

TEST(Hard,
     gatheringsListedInProseAreInsertedWhereItSays) { // A03184, shortened by none of its kinds
    const CollateAnswer answer = collate(
        {"A-C⁴ ² A-2S⁴ + inserted gatherings as follows: after 2A3: \"[fleuron]Aaiiii\"⁴, "
         "\"Aav\"⁴, \"Aavi\"⁴; after 2B3: \"Bbiiii\"² ; after 2C1: \"[left-pointing hand]Ccii\"² .",
         "", ""});
    EXPECT_TRUE(answer.problems.empty());
    EXPECT_EQ(answer.leafTotal, 12 + 41 * 4 + 12 + 2 + 2);
    EXPECT_THAT(answer.formula, HasSubstr("²2A⁴(²2A3+\"[fleuron]Aaiiii\"⁴, ²2A3+\"Aav\"⁴"));
}

TEST(Hard, dottedNumeralsAreMarksOfTheirOwn) { // A19026
    const CollateAnswer answer = collate({"P⁴ P.ii⁴ P.iii⁴ P.iiiiiiii⁴ Q² ²Q-2E⁴", "", ""});
    EXPECT_TRUE(answer.problems.empty());
    EXPECT_EQ(answer.makeUp.gatherings.at(1).signature.suffix, ".ii");
    EXPECT_EQ(answer.leafTotal, 16 + 2 + 13 * 4);
}

TEST(Hard, bracketsAndParenthesesMayBeTheMarksThemselves) { // A36033, A15337, B16297, A10780, DCRMR
    EXPECT_EQ(leaves("(z)⁴ (2A)-(2O)⁴"), 4 + 14 * 4);
    EXPECT_EQ(leaves("[]⁴ A⁴"), 8);
    EXPECT_EQ(leaves(")(4, ][4"), 8);
    EXPECT_EQ(leaves("(:)⁴ A-B⁴"), 12);
    EXPECT_EQ(leaves("):(⁸"), 8);
    EXPECT_EQ(leaves("[ez]⁴ ⁴ A-H⁴"), 36); // A10541: ⁴ belongs to the next mark
}

TEST(Hard, removalReplacementAndSigningInOneClause) { // A20836
    const CollateAnswer answer =
        collate({"A⁴ B-Y Z (-Z7,8, +chi² , chi1 signed \"Z5\") 2A-2I (-2I7,8).",
                 "[8], 144, 149-159, [5] p., 104 leaves, [124] p.", ""});
    EXPECT_TRUE(answer.problems.empty());
    EXPECT_EQ(answer.leafTotal, 250);
    EXPECT_TRUE(answer.extent->agrees);
    EXPECT_TRUE(assumes(answer, Ground::prose, "chi1 signed"));
    EXPECT_THAT(refs(answer), HasSubstr("Z6 χ1 χ2 2A1"));
}

TEST(Hard, aGatheringInsertedInAGathering) { // A18748, A21703
    const CollateAnswer answer = collate({"A⁴ (A3 + ²A⁴) B-G⁴", "", ""});
    EXPECT_EQ(answer.leafTotal, 32);
    EXPECT_THAT(refs(answer), HasSubstr("A3 ²A1 ²A2 ²A3 ²A4 A4 B1"));
    EXPECT_EQ(leaves("[pi]⁸([pi]4+[x]⁴)"), 12);
}

TEST(Hard, proseAfterTheFormulaIsNotCounted) { // A18748
    const CollateAnswer answer = collate(
        {"A⁴ B-G⁴. ² A⁴ is an additional quire of verse, present in only one known copy.", "", ""});
    EXPECT_TRUE(answer.problems.empty());
    EXPECT_EQ(answer.leafTotal, 28);
    EXPECT_TRUE(assumes(answer, Ground::prose, "additional quire"));
}

TEST(Hard, aRunInsertedWhereALeafWasRemoved) { // A11537
    const CollateAnswer answer = collate({"A-I⁴ (-I1, +[fleuron]-3[fleuron]⁴) K-Z⁴", "", ""});
    EXPECT_EQ(answer.leafTotal, 9 * 4 - 1 + 12 + 14 * 4);
    EXPECT_THAT(refs(answer), HasSubstr("H4 [fleuron]1"));
}

TEST(Hard, aLeafMovedBetweenSymbolSeries) { // A06339
    const CollateAnswer answer = collate({"[fleuron]⁴ (-[fleuron]4, +2*2) *⁴ 2*² (-2*2)", "", ""});
    EXPECT_TRUE(answer.problems.empty());
    EXPECT_EQ(answer.leafTotal, 4 + 4 + 1);
}

TEST(Hard, identityIsCountedOnce) { // A04260, A15695
    const CollateAnswer answer = collate({"L⁴ (L4 + \"M\"1 (=P2)) M-O⁴ P² (-P2)", "", ""});
    EXPECT_TRUE(answer.problems.empty());
    EXPECT_EQ(answer.leafTotal, 5 + 12 + 1);
    EXPECT_EQ(leaves("1⁴ (\"1\"1 + \"1i\" (= *4 from STC 25972)) 2-4⁴"), 17);
}

TEST(Hard, compoundMarksAndDoublePrefixes) { // A68942
    const CollateAnswer answer =
        collate({"²2A-2B⁶ ³4A-4B⁶, ⁴4A-⁴4E⁶ [par.]B-[par.]H⁶ 2[par.]A-2[par.]F⁶",
                 "740 p. in various pagings.", ""});
    EXPECT_TRUE(answer.problems.empty());
    EXPECT_EQ(answer.leafTotal, 6 * (2 + 2 + 5 + 7 + 6));
    EXPECT_FALSE(answer.extent->agrees);
    EXPECT_EQ(exitStatus(answer), 1);
}

TEST(Hard, mutilationOfOneCopyAgainstAnApproximateExtent) { // A11722
    const CollateAnswer answer = collate({"A⁸(-A1) B-C⁸ D⁸(D4 + X22) E⁸(-E5-7)", "ca. 298 p.", ""});
    EXPECT_EQ(answer.leafTotal, 7 + 16 + 9 + 5);
    EXPECT_TRUE(answer.extent->extent.approximate);
    EXPECT_FALSE(answer.extent->agrees);
}

TEST(Hard, volumesWithLabels) { // A21097
    const CollateAnswer answer =
        collate({"v.1, 4, 5: A², B-D⁴; v.2: A², B⁴; v.3: A², B-C⁴.", "5 v.", ""});
    EXPECT_EQ(answer.leafTotal, 3 * 14 + 6 + 10);
    EXPECT_EQ(answer.makeUp.gatherings.back().part, 4);
}

TEST(Hard, theExtraLettersOfALongerAlphabetAreWrittenOut) { // DCRMR 6.215.44.35
    EXPECT_EQ(leaves("A-T⁸ V⁸ W⁸ X-Z⁸"), 24 * 8);
    EXPECT_EQ(leaves("A-W⁸"), 21 * 8);
}

TEST(Hard, fragmentsGiveALowerBound) { // A22431, B07434, A13397
    const CollateAnswer fragment = collate({"A2-5+", "[8+] p.", ""});
    EXPECT_EQ(fragment.leafTotal, 4);
    EXPECT_TRUE(fragment.makeUp.continues);
    EXPECT_TRUE(fragment.extent->agrees);
    EXPECT_TRUE(readFormula("A-O⁴+").makeUp.continues);
    EXPECT_TRUE(readExtent("[5], 85, [2]+ leaves").atLeast);
}

TEST(Hard, plainConflictsWarn) { // A18733, A09376, Pansebeia (MHS, The Beehive, Oct. 2013)
    EXPECT_EQ(exitStatus(collate({"A⁴.", "[4], 15, [1] p.", ""})), 1);
    EXPECT_EQ(exitStatus(collate({"A⁴ B-2X⁸", "[8], 592 p.", ""})), 1);
    const CollateAnswer pansebeia =
        collate({"8°: A⁸ a⁸ B-I⁸ L-R⁸ T-2M⁸ 2N⁴ 3A⁸ 3a⁴ 3B-3F⁸ (K⁸ S⁸ 3F⁸ missing; 2D6 missing, "
                 "removed); 345 leaves",
                 "[32] 1-544 [545-552]; ²[24] 1-78 [79]", ""});
    EXPECT_EQ(pansebeia.leafTotal, 328);
    EXPECT_EQ(pansebeia.presentTotal, 328 - 8 - 1);
    EXPECT_EQ(pansebeia.extent->pageTotal, 687);
    EXPECT_EQ(exitStatus(pansebeia), 1);
    EXPECT_THAT(pansebeia.extent->explanation, HasSubstr("345 leaves are stated"));
    EXPECT_TRUE(assumes(pansebeia, Ground::formula, "'K' is said to be missing"));
}

TEST(Hard, aManuscriptInQuiresAndLeaves) { // TEI P5, element <collation>
    const CollateAnswer answer = collate({"1-5.8 6.6", "46 leaves", ""});
    EXPECT_EQ(answer.leafTotal, 46);
    EXPECT_TRUE(answer.extent->agrees);
    EXPECT_EQ(leaves("12-14.8 15.8(-7)"), 31);
    const CollateAnswer lacking = collate({"1⁸–12⁸ (12 lacks 8)", "", ""});
    EXPECT_EQ(lacking.leafTotal, 96);
    EXPECT_EQ(lacking.presentTotal, 95);
}

TEST(Hard, damagedAndTwoWayExtents) { // A74298, A82492, A89598
    const CollateAnswer both = collate({"2E⁴ 2F⁶.", "[2], 157-169 [i.e. 20] p.", ""});
    EXPECT_TRUE(both.extent->agrees);
    EXPECT_TRUE(assumes(both, Ground::extent, "[i.e. 20]"));
    const CollateAnswer bare = collate({"A⁶", "11, [1]", ""});
    EXPECT_TRUE(bare.extent->agrees);
    EXPECT_TRUE(assumes(bare, Ground::extent, "no unit"));
    EXPECT_TRUE(assumes(collate({"A⁶", "10], 131", ""}), Ground::extent, "bracket is missing"));
}

TEST(RealRecords, aMissingCountIsTakenFromTheExtentAndSaidToBe) {
    const CollateAnswer answer = collate({"A-D E⁴.", "[72] p.", ""});
    EXPECT_EQ(answer.leafTotal, 36);
    EXPECT_TRUE(answer.extent->agrees);
    EXPECT_TRUE(answer.extent->assumedFromExtent);
    EXPECT_TRUE(assumes(answer, Ground::extent, "8 leaves"));
    // The format alone proves nothing.
    const CollateAnswer alone = collate({"A-D E⁴.", "", "8vo"});
    EXPECT_EQ(alone.leafTotal, std::nullopt);
    EXPECT_EQ(alone.format, "8o");
    // Nor does an extent that fits nothing.
    EXPECT_EQ(collate({"A-D E⁴.", "[70] p.", ""}).leafTotal, std::nullopt);
}

TEST(RealRecords, theSameLossInsideCyclicCounts) {
    EXPECT_EQ(leaves("A-D·⁴ E⁶", "30 leaves"), 30);
    EXPECT_EQ(leaves("A-F⁴· G²", "38 leaves"), 38);
}

TEST(RealRecords, otherWaysOfWriting) {
    EXPECT_EQ(leaves("C⁴ ² A-F⁴"), 28);
    EXPECT_EQ(leaves("A⁴-O⁴"), 14 * 4);
    EXPECT_EQ(leaves("A(-A1)-K⁸"), 79);
    EXPECT_EQ(leaves("A(-A₂)⁴ B⁴"), 7);
    EXPECT_EQ(leaves("A₂₋₇ B⁴"), 10);
    EXPECT_EQ(leaves("**²⁻⁸ A²⁻⁴"), 10);
    EXPECT_EQ(leaves("A-Z₈"), 184);
    EXPECT_EQ(leaves("[x]² [pi]A⁴ piA⁴ [2d]A-B⁴ 2[A]2 [2 hands]⁶"), 2 + 4 + 4 + 8 + 1 + 6);
    EXPECT_EQ(leaves("[A-I⁸ K⁶]"), 78);
    EXPECT_EQ(leaves("[E¹] [C-F]⁴"), 17);
    EXPECT_EQ(leaves("8T-8T2", "p. 1015-1018"), 2);
    EXPECT_EQ(leaves("A12 B6"), 18);
    EXPECT_EQ(leaves("²A-G⁸ 2A-G8"), 14 * 8); // a range end below its start keeps the multiplier
    EXPECT_EQ(leaves("3A8 4A-F8"), 56);
}

TEST(RealRecords, damagedCountsAreReportedNotRepaired) {
    for (const char* formula : {"A-Dp4s", "A&#xbf;", "[pi]£", "A-Cø", "A-F⁴ Gx"}) {
        const CollateAnswer answer = collate({formula, "", ""});
        EXPECT_FALSE(answer.problems.empty()) << formula;
        EXPECT_EQ(exitStatus(answer), 2) << formula;
    }
    const CollateAnswer answer = collate({"A-F⁴ G-Gx H²", "", ""});
    EXPECT_EQ(answer.problems.front().message, "after 'G' a leaf count is expected, found 'x'");
    EXPECT_THAT(answer.formula, HasSubstr("A–F⁴")); // the readable rest is still offered
}

} // namespace
} // namespace headcap::core
