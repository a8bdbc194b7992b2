#include "core/values/typographic.h"

#include <random>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

// The rules of an English printing house (New Hart's Rules, 2005, 9.2: apostrophe and quotation
// marks; 4.15: primes for feet and inches), from memory.
TEST(Typographic, curlsQuotationMarksAndApostrophes) {
    const std::pair<const char*, const char*> kCases[]{
        {"can't", "can’t"},
        {"the Pilots' House", "the Pilots’ House"},
        {"\"back glued, B. Thrussell senior\"", "“back glued, B. Thrussell senior”"},
        {"a slip: \"back glued\". No photographs.", "a slip: “back glued”. No photographs."},
        {"(\"Facsimile of pl. IX …\")", "(“Facsimile of pl. IX …”)"},
        {"marked 'Facsimile' in ink", "marked ‘Facsimile’ in ink"},
        {"\"'Facsimile', she wrote\"", "“‘Facsimile’, she wrote”"},
        {"the 1840's", "the 1840’s"},
        {"bound in '26", "bound in ’26"},
        {"8 1/4\" high", "8 1/4″ high"},
        {"8½\" × 6\"", "8½″ × 6″"},
        {"a beam of 6'", "a beam of 6′"},
        {"\"printed 1723\" on it", "“printed 1723” on it"},
        {"l'Orme—\"vu\"", "l’Orme—“vu”"},
        {"nothing at all", "nothing at all"},
        {"already “curled”, isn’t it", "already “curled”, isn’t it"},
        {"", ""},
    };
    for (const auto& [typed, printed] : kCases) {
        EXPECT_EQ(typographic(typed), printed);
    }
}

// One sign for one sign, and what is printed is printed so again.
TEST(Typographic, keepsEveryOtherSign) {
    const std::string_view kSigns = "a'\"1 ,.(;";
    std::mt19937 chance(1684);
    const auto length = [](std::string_view text) {
        std::size_t signs = 0;
        for (const char c : text) {
            signs += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1 : 0;
        }
        return signs;
    };
    for (int i = 0; i < 5'000; ++i) {
        std::string text;
        for (std::size_t n = chance() % 30; n > 0; --n) {
            text += kSigns[chance() % kSigns.size()];
        }
        const std::string set = typographic(text);
        ASSERT_EQ(length(set), text.size()) << text;
        ASSERT_EQ(set.find_first_of("'\""), std::string::npos) << text;
        ASSERT_EQ(typographic(set), set) << text;
    }
}

} // namespace
} // namespace headcap::core
