#include "core/collation/place_words.h"

#include <gtest/gtest.h>

#include "core/collation/walk.h"

namespace headcap::core {
namespace {

std::string read(const char* formula, const char* extent, const char* place) {
    const auto said = readPlace(walkedBook(formula, extent).book, place);
    return said ? (said->isThere ? "" : "! ") + said->text : "left alone";
}

// 8°: A⁴ B–O⁸, [8] 1–205 [3]: Massachusetts Historical Society, as in COLLATION.md; the page a leaf
// bears is computed.
TEST(PlaceWords, turnAPlaceIntoItsOtherForms) {
    const char* formula = "8°: A⁴ B-O⁸";
    const char* extent = "[8] 1-205 [3]";
    EXPECT_EQ(read(formula, extent, "C4"), "C4 · pp. 23–24");
    EXPECT_EQ(read(formula, extent, "C4r"), "C4r · p. 23");
    EXPECT_EQ(read(formula, extent, "p. 24"), "C4v · p. 24");
    EXPECT_EQ(read(formula, extent, "C4–C6"), "C4–C6 · pp. 23–28 · 3 leaves");
    EXPECT_EQ(read(formula, extent, "pp. 23–28"), "C4–C6 · pp. 23–28 · 3 leaves");
    EXPECT_EQ(read(formula, extent, "B2, C1"), "B2, C1 · 2 leaves");
    EXPECT_EQ(read("2°: a⁴ A-O⁸ P¹⁰", "[4], CXXII leaves", "B1"), "B1 · f. IX");
}

TEST(PlaceWords, sayWhyThereIsNoSuchPlace) {
    const char* formula = "8°: A⁴(-A4) B⁸; B⁴";
    EXPECT_EQ(read(formula, "", "D1"), "! no gathering of this book is signed so");
    EXPECT_EQ(read(formula, "", "A5"), "! that gathering has not so many leaves");
    EXPECT_EQ(read(formula, "", "A4"), "! the make-up says that leaf was taken out");
    EXPECT_EQ(read(formula, "", "B2"), "! that may be B2 or B2");
    EXPECT_EQ(read("8°: A⁴ B-O⁸", "[8] 1-205 [3]", "p. 223"),
              "! no page or leaf of this book bears that number");
    EXPECT_EQ(read("A-C⁸", "", "B2, D1, C3"), "! D1: no gathering of this book is signed so");
}

// What is not there and what only can't be told apart are two things.
TEST(PlaceWords, absentIsOnlyWhatTheBookCertainlyHasNot) {
    const auto book = walkedBook("8°: A⁴(-A4) B⁸; B⁴", "").book;
    EXPECT_TRUE(readPlace(book, "D1")->isAbsent);
    EXPECT_TRUE(readPlace(book, "A4")->isAbsent);
    EXPECT_FALSE(readPlace(book, "B2")->isAbsent);
    EXPECT_FALSE(readPlace(walkedBook("A B⁸", "").book, "A3")->isAbsent);
}

TEST(PlaceWords, sayNothingWhereNothingWouldTell) {
    EXPECT_EQ(read("A⁴ B⁸", "", "p. 9"), "left alone");
    EXPECT_EQ(read("A⁴ B⁸", "", "pl. 7"), "left alone");
}

// Among words that are no leaves those are read that are.
TEST(PlaceWords, readTheLeavesOutOfATextThatSaysMore) {
    EXPECT_EQ(read("A-C⁸", "", "C4r, black and red ink"), "C4r");
    EXPECT_EQ(read("A-C⁸", "", "upper joint, B2, C1"), "B2, C1 · 2 leaves");
    EXPECT_EQ(read("A-C⁸", "", "upper joint, D4"), "! no gathering of this book is signed so");
    for (const char* words : {"lines 11, 12, 19", "spine and joints", "wrapper of SR 19",
                              "all five", "corners", "f. 41, line 3"}) {
        EXPECT_EQ(read("B-C⁸", "", words), "left alone") << words;
    }
}

TEST(PlaceWords, leaveAloneWhatIsNoLeaf) {
    EXPECT_EQ(read("A⁴", "", "upper board, along the joint"), "left alone");
    EXPECT_EQ(read("A⁴", "", ""), "left alone");
    EXPECT_EQ(read("", "", "C4"), "left alone");
    EXPECT_EQ(read("A⁴", "", "3 plates"), "left alone");
}

} // namespace
} // namespace headcap::core
