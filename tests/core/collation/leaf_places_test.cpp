#include "core/collation/leaf_places.h"

#include <gtest/gtest.h>

#include "core/collation/collate.h"
#include "core/collation/plates.h"

namespace headcap::core {
namespace {

LaidBook book(const char* formula, const char* extent = "") {
    CollateAnswer answer = collate({formula, extent, ""});
    return {answer.makeUp, answer.leaves, answer.numbers, {}};
}

std::string pageOf(const LaidBook& in, const char* ref) {
    const auto place = locate(in, *parseLeafRef(ref));
    const auto page = place ? asPage(in, *place) : std::nullopt;
    return page ? toText(*page) : "none";
}

PlaceProblem problemOf(const LaidBook& in, const char* ref) {
    return locate(in, *parseLeafRef(ref)).error().problem;
}

TEST(Places, turnFromOneFormIntoTheOthers) {
    const LaidBook in = book("A⁴ B-O⁸", "[8] 1-205 [3]");
    EXPECT_EQ(pageOf(in, "C4r"), "p. 23");
    EXPECT_EQ(pageOf(in, "C4"), "p. 23");
    EXPECT_EQ(pageOf(in, "C4v"), "p. 24");
    EXPECT_EQ(toText(asSigned(in, *locate(in, *parseLeafRef("p. 24")))), "C4v");
    const LaidBook folios = book("2°: a⁴ A-O⁸ P¹⁰", "[4], CXXII leaves");
    EXPECT_EQ(toText(*asFolio(folios, *locate(folios, *parseLeafRef("B1v")))), "f. IXv");
    EXPECT_EQ(toText(asSigned(folios, *locate(folios, *parseLeafRef("f. IXv")))), "B1v");
}

TEST(Places, areCheckedAgainstTheBook) {
    const LaidBook in = book("A⁴(-A4) B⁸; B⁴ C", "");
    EXPECT_EQ(problemOf(in, "D1"), PlaceProblem::noSuchGathering);
    EXPECT_EQ(problemOf(in, "A5"), PlaceProblem::noSuchLeaf);
    EXPECT_EQ(problemOf(in, "A4"), PlaceProblem::cancelled);
    EXPECT_EQ(problemOf(in, "C1"), PlaceProblem::sizeUnknown);
    EXPECT_EQ(problemOf(in, "B2"), PlaceProblem::severalPlaces);
    EXPECT_EQ(problemOf(in, "p. 9"), PlaceProblem::noSuchNumber);
    EXPECT_EQ(problemOf(in, "pl. 9"), PlaceProblem::notALeaf);
}

TEST(Places, ofASetAreEachLeafOnce) {
    const LaidBook in = book("A⁴ B-O⁸", "[8] 1-205 [3]");
    const auto found =
        locate(in, *parseLeafSet("B2, B1-3, gathering A, pp. 1–2, 3 plates, 2 leaves"));
    ASSERT_TRUE(found);
    EXPECT_EQ(found->leaves, (std::vector<std::size_t>{0, 1, 2, 3, 4, 5, 6}));
    EXPECT_EQ(found->platesUnplaced, 3);
    EXPECT_EQ(found->leavesUnplaced, 2);
    EXPECT_EQ(toText(toLeafSet(in, found->leaves)), "gathering A, B1–B3");
    const auto wrong = locate(in, *parseLeafSet("B2, D3–C1"));
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().item, 1U);
    EXPECT_EQ(wrong.error().problem, PlaceProblem::backwards);
    EXPECT_EQ(toText(toLeafSet(in, locate(in, *parseLeafSet("whole book"))->leaves)), "whole book");
    EXPECT_EQ(toText(toLeafSet(in, locate(in, *parseLeafSet("gatherings B-D, F"))->leaves)),
              "gatherings B–D, gathering F");
}

TEST(Plates, areReadPrintedAndCheckedInTheirPlaces) {
    for (const char* text : {"to face p. 34", "after C4", "before B1", "frontispiece", "at end"}) {
        const auto place = parsePlatePlace(text);
        ASSERT_TRUE(place) << text;
        EXPECT_EQ(toText(*place), text);
    }
    EXPECT_EQ(parsePlatePlace("to face the window").error().at, 8U);
    const LaidBook in = book("A⁴ B-O⁸", "[8] 1-205 [3]");
    const auto plate = [](const char* label, const char* place, bool present) {
        return PlateCalled{label, *parsePlatePlace(place), "binder's direction", false, present};
    };
    const PlateCheck check =
        checkPlates(in, {plate("1", "frontispiece", true), plate("2", "to face p. 34", true),
                         plate("3", "to face p. 20", true), plate("3", "to face p. 900", false)});
    EXPECT_EQ(check.called, 4);
    EXPECT_EQ(check.present, 3);
    EXPECT_EQ(check.findings, (std::vector<PlateFinding>{
                                  {2, PlateProblem::outOfOrder, std::nullopt},
                                  {3, PlateProblem::lacking, std::nullopt},
                                  {3, PlateProblem::labelTwice, std::nullopt},
                                  {3, PlateProblem::placeNotInBook, PlaceProblem::noSuchNumber}}));
}

} // namespace
} // namespace headcap::core
