#include "core/values/roman.h"

#include <set>
#include <string>

#include <gtest/gtest.h>

#include "core/values/book_date.h"
#include "tests/core/values/reference_table.h"

namespace headcap::core {
namespace {

// The classical spelling, for a round trip.
std::string classical(int number) {
    static constexpr std::pair<int, const char*> kSigns[] = {
        {1000, "M"}, {900, "CM"}, {500, "D"}, {400, "CD"}, {100, "C"}, {90, "XC"}, {50, "L"},
        {40, "XL"},  {10, "X"},   {9, "IX"},  {5, "V"},    {4, "IV"},  {1, "I"}};
    std::string text;
    for (const auto& [value, sign] : kSigns) {
        for (; number >= value; number -= value) {
            text += sign;
        }
    }
    return text;
}

TEST(RomanNumber, readsEveryClassicalNumeral) {
    for (int n = 1; n <= 3999; ++n) {
        ASSERT_EQ(romanNumber(classical(n)), n) << classical(n);
    }
}

TEST(RomanNumber, readsThePublishedForms) {
    HEADCAP_REFERENCE_OR_SKIP(rows, "text/roman_forms.tsv");
    // Not numerals of letters alone, or marked doubtful by those who give them.
    const std::set<std::string> out = {"M.CCCC.7.Z", "M.CCCC.M.j.XX.VIII",
                                       "jajvjC and threttie twa", "VIX"};
    std::size_t read = 0;
    for (const auto& row : *rows) {
        if (!out.contains(row[0])) {
            EXPECT_EQ(romanNumber(row[0]), std::stoll(row[1])) << row[0];
            ++read;
        }
    }
    EXPECT_EQ(read, rows->size() - out.size());
}

TEST(RomanNumber, readsImprintDates) {
    HEADCAP_REFERENCE_OR_SKIP(rows, "text/roman_imprint_dates_dta.tsv");
    for (const auto& row : *rows) {
        if (row[4] != "yes") { // the book's own date and its record differ
            continue;
        }
        const auto date = parseBookDate(row[2]);
        ASSERT_TRUE(date.has_value()) << row[2];
        EXPECT_EQ(date->edtf, row[1]) << row[2];
    }
}

TEST(RomanNumber, isNoWordOfRomanLetters) {
    for (const char* word : {"civil", "mild", "livid", "dim lid", "", "...", "\u0186", "VV",
                             "IIIII", "IXM", "XIXX", "1612"}) {
        EXPECT_FALSE(romanNumber(word).has_value()) << word;
    }
}

} // namespace
} // namespace headcap::core
