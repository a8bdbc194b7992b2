#include "core/collation/leaf_ref.h"

#include <string>
#include <utility>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

std::string again(std::string_view text) {
    const auto set = parseLeafSet(text);
    return set ? toText(*set) : "error at " + std::to_string(set.error().at);
}

class LeafRefText : public testing::TestWithParam<std::pair<const char*, const char*>> {};

TEST_P(LeafRefText, isReadAndPrintedInOneForm) {
    const auto& [typed, printed] = GetParam();
    const auto ref = parseLeafRef(typed);
    ASSERT_TRUE(ref) << typed;
    EXPECT_EQ(toText(*ref), printed);
    EXPECT_EQ(parseLeafRef(toText(*ref)), ref);
}

INSTANTIATE_TEST_SUITE_P(
    Forms, LeafRefText,
    testing::Values(
        std::pair{"K5r", "K5r"}, std::pair{"π2v", "π2v"}, std::pair{"pi2v", "π2v"},
        std::pair{"chi1", "χ1"}, std::pair{"Aa3", "2A3"}, std::pair{"2A3 verso", "2A3v"},
        std::pair{"AAA3v", "3A3v"}, std::pair{"²A4", "²A4"}, std::pair{"^pi^A1r", "πA1r"},
        std::pair{"πA5+1r", "πA5+1r"}, std::pair{"[A]2", "[A]2"}, std::pair{"[par.]3v", "¶3v"},
        std::pair{"2[par.]1", "2¶1"}, std::pair{"**2", "2*2"}, std::pair{"O*4", "O*4"},
        std::pair{"31₄", "31₄"}, std::pair{"31.4r", "31₄r"}, std::pair{"α3", "α3"},
        std::pair{"(z)2", "(z)2"}, std::pair{"[fleuron]4", "[fleuron]4"},
        std::pair{"[]AA3v", "[]AA3v"}, std::pair{"[fleuron]AA3", "[fleuron]AA3"},
        std::pair{"f. 112v", "f. 112v"}, std::pair{"fol. xii r", "f. xiir"}, std::pair{"f4", "f4"},
        std::pair{"f 4", "f. 4"}, std::pair{"p. 223", "p. 223"}, std::pair{"p. xvi", "p. xvi"},
        std::pair{"p. ²44", "p. ²44"}, std::pair{"p5", "p5"}, std::pair{"pl. 7", "pl. 7"},
        std::pair{"plate XII", "pl. XII"}, std::pair{"frontispiece", "frontispiece"}));

class LeafSetText : public testing::TestWithParam<std::pair<const char*, const char*>> {};

TEST_P(LeafSetText, isReadAndPrintedInOneForm) {
    const auto& [typed, printed] = GetParam();
    const auto set = parseLeafSet(typed);
    ASSERT_TRUE(set) << typed << " at " << set.error().at;
    EXPECT_EQ(toText(*set), printed);
    EXPECT_EQ(parseLeafSet(toText(*set)), set);
}

INSTANTIATE_TEST_SUITE_P(
    Forms, LeafSetText,
    testing::Values(std::pair{"B2, C1–C4, 3 plates", "B2, C1–C4, 3 plates"},
                    std::pair{"C1-4", "C1–C4"}, std::pair{"C1,3; D2", "C1, C3, D2"},
                    std::pair{"pp. 223-30", "pp. 223–230"}, std::pair{"p. 12, 15", "p. 12, p. 15"},
                    std::pair{"ff. 112v-115r", "ff. 112v–115r"}, std::pair{"pl. 3-5", "pls. 3–5"},
                    std::pair{"quire B", "gathering B"},
                    std::pair{"gatherings B-D, F", "gatherings B–D, gathering F"},
                    std::pair{"E", "gathering E"}, std::pair{"throughout", "whole book"},
                    std::pair{"1 leaf and K5r", "1 leaf, K5r"}, std::pair{"31₄, 35₈", "31₄, 35₈"},
                    std::pair{"B7-C2", "B7–C2"}));

// Found by feeding the reader changed text: what is printed is read again as the same.
TEST(LeafSet, aDoubledLetterThatLooksLikeASideIsWrittenOut) {
    for (const char* typed : {"πvv", "πrr", "π20vv", "χvvv–χrrrr", "*vv"}) {
        const auto set = parseLeafSet(typed);
        if (set) {
            EXPECT_EQ(parseLeafSet(toText(*set)), set) << typed << " as " << toText(*set);
        }
    }
    EXPECT_EQ(again("πvv"), "gathering πvv");
}

// Found in the same way: printed as π2 it was read again as a leaf.
TEST(LeafSet, aRaisedPiBeforeANumberIsMarkedAsRaised) {
    EXPECT_EQ(again("^π2"), "gathering ^π2");
    EXPECT_EQ(again("^chi3"), "gathering ^χ3");
    EXPECT_EQ(again("π2"), "π2");
}

TEST(LeafSet, aRomanFoliosVersoStandsApartWhereItWouldBeAnotherNumber) {
    EXPECT_EQ(again("f. xi v"), "f. xi v");
    EXPECT_EQ(again("f. xiv"), "f. xiv");
    EXPECT_EQ(again("ff. d v-dc v"), "ff. d v–dc v");
    EXPECT_EQ(again("f. xiir"), "f. xiir");
}

TEST(LeafSet, saysWhereReadingStopped) {
    EXPECT_EQ(again(""), "error at 0");
    EXPECT_EQ(again("B2, ?"), "error at 4");
    EXPECT_EQ(again("B2 C3"), "error at 3");
    EXPECT_EQ(again("7"), "error at 0");
    EXPECT_EQ(again("B2–p. 7"), "error at 5");
}

} // namespace
} // namespace headcap::core
