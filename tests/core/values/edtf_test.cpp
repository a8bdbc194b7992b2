#include "core/values/edtf.h"

#include <optional>
#include <string>

#include <gtest/gtest.h>

#include "core/values/book_date.h"
#include "tests/core/values/reference_table.h"

namespace headcap::core {
namespace {

bool isSet(const std::string& text) {
    return text.starts_with('[') || text.starts_with('{');
}

// "2004-06-01" is the year 2004; "-0200-01-01" is -200.
std::optional<int> yearOfBound(const std::string& bound) {
    if (bound.size() < 4 || bound.find_first_not_of("-0123456789") != std::string::npos) {
        return std::nullopt;
    }
    return std::stoi(bound.substr(0, bound.find('-', 1)));
}

TEST(Edtf, readsEveryDateOfLevels0And1AsItIs) {
    HEADCAP_REFERENCE_OR_SKIP(rows, "edtf/edtf_valid.tsv");
    int read = 0;
    for (const auto& row : *rows) {
        if (row[1] != "0" && row[1] != "1") {
            continue;
        }
        const auto edtf = parseEdtf(row[0]);
        ASSERT_TRUE(edtf.has_value()) << row[0];
        EXPECT_EQ(edtfText(*edtf), row[0]);
        ++read;
    }
    EXPECT_GT(read, 100);
}

TEST(Edtf, readsTheSetsOfLevel2) {
    HEADCAP_REFERENCE_OR_SKIP(rows, "edtf/edtf_valid.tsv");
    int read = 0;
    for (const auto& row : *rows) {
        if (!isSet(row[0]) || row[0].find(" ,") != std::string::npos) {
            continue;
        }
        const auto edtf = parseEdtf(row[0]);
        ASSERT_TRUE(edtf.has_value()) << row[0];
        std::string tight = row[0];
        std::erase(tight, ' ');
        EXPECT_EQ(edtfText(*edtf), tight);
        ++read;
    }
    EXPECT_GT(read, 20);
}

TEST(Edtf, refusesEveryInvalidString) {
    HEADCAP_REFERENCE_OR_SKIP(rows, "edtf/edtf_invalid.tsv");
    for (const auto& row : *rows) {
        EXPECT_FALSE(parseEdtf(row[0]).has_value()) << row[0] << ": " << row[1];
    }
    EXPECT_GT(rows->size(), 100U);
}

TEST(Edtf, coversTheYearsThatLibrariesGive) {
    HEADCAP_REFERENCE_OR_SKIP(rows, "edtf/edtf_valid.tsv");
    int compared = 0;
    for (const auto& row : *rows) {
        const auto first = yearOfBound(row[3]);
        const auto last = yearOfBound(row[4]);
        const auto edtf = parseEdtf(row[0]);
        // The winter of a year runs into the next in some countings and not in others.
        if (!edtf || !first || !last || row[0].find("-24") != std::string::npos) {
            continue;
        }
        const auto years = yearsOf(BookDate{edtfText(*edtf)});
        if (row[0].starts_with('[') && row[0].ends_with("..]")) {
            EXPECT_FALSE(years.has_value()) << row[0];
            continue;
        }
        ASSERT_TRUE(years.has_value()) << row[0];
        EXPECT_EQ(years->first, *first) << row[0];
        EXPECT_EQ(years->last, *last) << row[0];
        ++compared;
    }
    EXPECT_GT(compared, 60);
}

TEST(Edtf, saysWhereItFails) {
    EXPECT_EQ(parseEdtf("").error(), (TextError{TextProblem::empty, 0}));
    EXPECT_EQ(parseEdtf("1612-13").error().problem, TextProblem::outOfRange);
    EXPECT_EQ(parseEdtf("1612/1611").error().problem, TextProblem::outOfRange);
    EXPECT_EQ(parseEdtf("1612 or so").error(), (TextError{TextProblem::trailing, 4}));
    EXPECT_EQ(parseEdtf("1612/16AB").error().at, 5U);
}

} // namespace
} // namespace headcap::core
