#include "core/catchwords/printed_mark.h"

#include <string>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/catchwords/number_on_page.h"

namespace headcap::core {
namespace {

std::string named(std::string_view text) {
    const auto mark = readPrintedMark(text);
    if (!mark)
        return "nothing";
    return fmt::format("{}{}", mark->gathering ? signatureOf(*mark->gathering) : "?", mark->leaf);
}

struct Example {
    const char* printed;
    const char* means;
};

class ReadMark : public testing::TestWithParam<Example> {};

TEST_P(ReadMark, namesItsGatheringAndLeaf) {
    EXPECT_EQ(named(GetParam().printed), GetParam().means);
}

INSTANTIATE_TEST_SUITE_P(
    Printed, ReadMark,
    testing::Values(Example{"A", "A1"}, Example{"A 2", "A2"}, Example{"B iiij", "B4"},
                    Example{"C v", "C5"}, Example{"Aa ij", "2A2"}, Example{"A a a 3", "3A3"},
                    Example{"I ij", "I2"}, Example{"J 3", "I3"}, Example{"U u 3", "2V3"},
                    Example{"A2", "A2"}, Example{"Biij", "B3"}, Example{"a 4", "a4"},
                    Example{")( iij", ")(3"}, Example{")( )( 2", "2)(2"}, Example{"):( 3", "):(3"},
                    Example{"* * 2", "2*2"}, Example{"(a) ij", "(a)2"}, Example{")o( 3", ")o(3"},
                    Example{"II. Theil. B", "B1"}, Example{"[Crit. St.] F 2", "F2"},
                    Example{"Lamb. Archit. II. B. B", "B1"}, Example{"C Eulers Artillerie.", "C1"},
                    Example{"ſ 2", "s2"}, Example{"* jv", "*4"}, Example{"3", "?3"},
                    Example{"Anno", "nothing"}, Example{"", "nothing"}));

TEST(PrintedMark, countsThePrintersAlphabet) {
    const auto between = [](std::string_view from, std::string_view to) {
        return gatheringsBetween(*readPrintedMark(from)->gathering,
                                 *readPrintedMark(to)->gathering);
    };
    // B-R is 16, A-2Z 46 gatherings (the 23-letter alphabet, DCRM(B) 7B9).
    EXPECT_EQ(between("B", "R"), 15);
    EXPECT_EQ(between("A", "Zz"), 45);
    EXPECT_EQ(between("V", "W"), 1);
    EXPECT_EQ(between("W", "X"), 1);
    EXPECT_EQ(between("V", "X"), 1);
    EXPECT_EQ(between("Z", "Aa"), 1);
    EXPECT_EQ(between("A", "a"), std::nullopt);
}

TEST(NumberOnPage, readsWhatPrintersSet) {
    const auto value = [](std::string_view text) {
        const auto number = readNumberOnPage(text);
        return number ? number->value : -1;
    };
    EXPECT_EQ(value("12"), 12);
    EXPECT_EQ(value("(12)"), 12);
    EXPECT_EQ(value("fol. 7"), 7);
    EXPECT_EQ(value("xij"), 12);
    EXPECT_EQ(value("XLIX"), 49);
    EXPECT_EQ(value("136[134]"), 136);
    EXPECT_EQ(value("12*"), -1);
    EXPECT_EQ(value("99999999999"), -1);
    EXPECT_EQ(value(""), -1);
    EXPECT_TRUE(readNumberOnPage("[5]")->supplied);
    EXPECT_FALSE(readNumberOnPage("(5)")->supplied);
}

} // namespace
} // namespace headcap::core
