#include "core/values/fold.h"

#include <thread>
#include <vector>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

struct Pair {
    const char* printed;
    const char* typed;
};

class Fold : public testing::TestWithParam<Pair> {};

TEST_P(Fold, findsWhatIsPrintedByWhatIsTyped) {
    EXPECT_EQ(foldForSearch(GetParam().printed), foldForSearch(GetParam().typed));
}

INSTANTIATE_TEST_SUITE_P(
    Letters, Fold,
    testing::Values(
        Pair{"\u017Ftra\u017F\u017Fe", "Strasse"}, Pair{"Stra\u00DFe", "STRASSE"},
        Pair{"\u1E9E", "ss"}, Pair{"\u00D8rsted", "orsted"}, Pair{"\u0152uvres", "oeuvres"},
        Pair{"\u00C6gypti", "aegypti"}, Pair{"\u00DEor\u00F0", "thord"}, Pair{"o\uA75Bdo", "ordo"},
        Pair{"\uA751fecit", "perfecit"}, Pair{"\uA753 domo", "pro domo"},
        Pair{"omnib\uA770", "omnibus"}, Pair{"\uA76Fcordia", "concordia"}, Pair{"\u204A", "&"},
        Pair{"\uFB01ne \uFB06\u0259", "fine st\u0259"}, Pair{"\u017Fcho\u0364n", "sch\u00F6n"},
        Pair{"Ma\u0364nner", "Manner"}, Pair{"v\u0303", "v"}, Pair{"8\u00B2 N\u00BA", "82 no"},
        Pair{"\u0142\u00F3d\u017A", "lodz"}, Pair{"\u201Cbook\u201D \u2013 a", "\"book\" - a"},
        Pair{"a\u0301", "\u00E1"},
        Pair{"\u1F4D\u03BC\u03B7\u03C1\u03BF\u03C2", "\u03BF\u03BC\u03B7\u03C1\u03BF\u03C3"},
        Pair{"hy\u00ADphen", "hyphen"}, Pair{"CI\u0186", "ci\u2184"}));

TEST(Fold, keepsLettersThatSpellAndAllOtherScripts) {
    EXPECT_EQ(foldForSearch("\u304C"), "\u304C"); // a voiced syllable is another syllable
    EXPECT_EQ(foldForSearch("\u0926\u0947\u0935"), "\u0926\u0947\u0935");
    EXPECT_NE(foldForSearch("u"), foldForSearch("v"));
}

TEST(Fold, isStableAndPlainWhereItFoundLatin) {
    std::string all;
    for (char32_t c = 0x20; c < 0x2100; ++c) {
        std::string letter;
        if (c < 0x80) {
            letter += static_cast<char>(c);
        } else if (c < 0x800) {
            letter += static_cast<char>(0xC0 | (c >> 6));
            letter += static_cast<char>(0x80 | (c & 0x3F));
        } else {
            letter += static_cast<char>(0xE0 | (c >> 12));
            letter += static_cast<char>(0x80 | ((c >> 6) & 0x3F));
            letter += static_cast<char>(0x80 | (c & 0x3F));
        }
        const std::string once = foldForSearch(letter);
        ASSERT_EQ(foldForSearch(once), once) << letter;
        if (c >= 0xC0 && c < 0x180 && c != 0xD7 && c != 0xF7) {
            for (const char byte : once) {
                EXPECT_LT(static_cast<unsigned char>(byte), 0x80) << letter;
            }
        }
    }
}

// An accent elsewhere in a text sends the whole of it to ICU.
TEST(Fold, ofPlainTextIsWhatTheLibraryMakesOfIt) {
    std::string plain = "Guarded K7 \u00B7 paste\u00B7and tissue \u00B7 ";
    for (char c = 1; c < 0x7F; ++c) {
        plain += c;
    }
    EXPECT_EQ(foldForSearch(plain + "\u00E9"), foldForSearch(plain) + "e");
}

TEST(Fold, standsBrokenUtf8) {
    EXPECT_EQ(foldForSearch("ab\xC3"), foldForSearch("AB\xC3"));
    EXPECT_EQ(foldForSearch(""), "");
}

TEST(Fold, isTheSameFromManyThreads) {
    const std::string text = "Die \u017Fcho\u0364ne Stra\u00DFe, \u0152uvres";
    const std::string expected = foldForSearch(text);
    std::vector<int> wrong(4, 0);
    std::vector<std::thread> threads;
    for (int& count : wrong) {
        threads.emplace_back([&] {
            for (int i = 0; i < 500; ++i) {
                count += foldForSearch(text) == expected ? 0 : 1;
            }
        });
    }
    for (std::thread& thread : threads) {
        thread.join();
    }
    EXPECT_EQ(wrong, std::vector<int>(4, 0));
}

} // namespace
} // namespace headcap::core
