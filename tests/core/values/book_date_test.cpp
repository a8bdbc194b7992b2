#include "core/values/book_date.h"

#include <ostream>
#include <string>

#include <gtest/gtest.h>

namespace headcap::core {

static void PrintTo(const BookDate& date, std::ostream* out) {
    *out << date.edtf;
}

namespace {

struct Typed {
    const char* typed;
    const char* edtf;
    const char* shown;
};

void PrintTo(const Typed& typed, std::ostream* out) {
    *out << typed.typed;
}

class BookDateTyped : public testing::TestWithParam<Typed> {};

TEST_P(BookDateTyped, isReadShownAndReadAgain) {
    const auto date = parseBookDate(GetParam().typed);
    ASSERT_TRUE(date.has_value());
    EXPECT_EQ(date->edtf, GetParam().edtf);
    EXPECT_EQ(toText(*date), GetParam().shown);
    EXPECT_EQ(parseBookDate(toText(*date)), *date);
    EXPECT_EQ(parseBookDate(date->edtf), *date);
}

// The patterns of probable dates: Anglo-American Cataloguing Rules, 1.4F7, and DCRM(B), 4D.
INSTANTIATE_TEST_SUITE_P(
    Cataloguing, BookDateTyped,
    testing::Values(Typed{"[1971 or 1972]", "[1971,1972]", "1971 or 1972"},
                    Typed{"[1969?]", "1969?", "1969?"},
                    Typed{"[between 1906 and 1912]", "[1906..1912]", "between 1906 and 1912"},
                    Typed{"[ca. 1960]", "1960~", "ca. 1960"}, Typed{"[197-]", "197X", "1970s"},
                    Typed{"[197-?]", "197X?", "1970s?"}, Typed{"[18--]", "18XX", "19th century"},
                    Typed{"[18--?]", "18XX?", "19th century?"},
                    Typed{"[not after 1652]", "[..1652]", "not after 1652"},
                    Typed{"[not before 1479]", "[1479..]", "not before 1479"},
                    Typed{"1560 [i.e. 1650]", "1650", "1650"}, Typed{"16[55]", "1655", "1655"}));

INSTANTIATE_TEST_SUITE_P(
    Years, BookDateTyped,
    testing::Values(Typed{"1612", "1612", "1612"}, Typed{" 1612. ", "1612", "1612"},
                    Typed{"c1590", "1590~", "ca. 1590"}, Typed{"circa 1590", "1590~", "ca. 1590"},
                    Typed{"about 1590", "1590~", "ca. 1590"}, Typed{"1590 (?)", "1590?", "1590?"},
                    Typed{"ca. 1590?", "1590%", "ca. 1590?"},
                    Typed{"probably 1590", "1590?", "1590?"}, Typed{"anno 1655", "1655", "1655"},
                    Typed{"\u00A9 1900", "1900", "1900"}, Typed{"842 AD", "0842", "AD 842"},
                    Typed{"45 BC", "-0044", "45 BC"}, Typed{"MDCXII", "1612", "1612"},
                    Typed{"M. DC. XV.", "1615", "1615"},
                    Typed{"CI\u0186 I\u0186 CX", "1610", "1610"},
                    Typed{"Anno M.D.L.", "1550", "1550"}, Typed{"165?", "165X", "1650s"},
                    Typed{"16??", "16XX", "17th century"}, Typed{"1590s", "159X", "1590s"},
                    Typed{"1590er", "159X", "1590s"}, Typed{"160-", "160X", "160-"},
                    Typed{"1600s", "16XX", "17th century"}));

INSTANTIATE_TEST_SUITE_P(
    Spans, BookDateTyped,
    testing::Values(Typed{"1702-1741", "1702/1741", "1702\u20131741"},
                    Typed{"1702-41", "1702/1741", "1702\u20131741"},
                    Typed{"1702\u201312", "1702/1712", "1702\u20131712"},
                    Typed{"1702-12", "1702-12", "December 1702"},
                    Typed{"from 1702 to 1741", "1702/1741", "1702\u20131741"},
                    Typed{"ca. 1590-1600", "1590~/1600~", "ca. 1590\u20131600"},
                    Typed{"1590~/1600", "1590~/1600", "1590 ca.\u20131600"},
                    Typed{"1590?-1600", "1590?/1600", "1590?\u20131600"},
                    Typed{"MDCXII-MDCXV", "1612/1615", "1612\u20131615"},
                    Typed{"1600-", "1600/..", "1600\u2013"}, Typed{"1600/", "1600/", "1600\u2013?"},
                    Typed{"?\u20131600", "/1600", "?\u20131600"},
                    Typed{"until 1600", "../1600", "until 1600"},
                    Typed{"before 1600", "[..1599]", "not after 1599"},
                    Typed{"after 1600", "[1601..]", "not before 1601"},
                    Typed{"1648/9", "[1648,1649]", "1648 or 1649"},
                    Typed{"1655 or 6", "[1655,1656]", "1655 or 1656"},
                    Typed{"1651, 1653 and 1655", "{1651,1653,1655}", "1651, 1653 and 1655"},
                    Typed{"1651-1653, 1655", "{1651..1653,1655}", "1651\u20131653 and 1655"}));

INSTANTIATE_TEST_SUITE_P(
    Centuries, BookDateTyped,
    testing::Values(
        Typed{"16th century", "15XX", "16th century"},
        Typed{"sixteenth cent.", "15XX", "16th century"}, Typed{"19th c.", "18XX", "19th century"},
        Typed{"s. XVI", "15XX", "16th century"}, Typed{"XVIe si\u00E8cle", "15XX", "16th century"},
        Typed{"16. Jh.", "15XX", "16th century"}, Typed{"16th century?", "15XX?", "16th century?"},
        Typed{"early 16th century", "[1500~..1533~]", "early 16th century"},
        Typed{"s. XVI ex.", "[1567~..1599~]", "late 16th century"},
        Typed{"mid-16th century", "[1534~..1566~]", "mid-16th century"},
        Typed{"2nd half of the 16th century", "[1550~..1599~]", "second half of the 16th century"},
        Typed{"16th-17th century", "15XX/16XX", "16th\u201317th century"},
        Typed{"s. XVI-XVII", "15XX/16XX", "16th\u201317th century"},
        Typed{"18-19 c.", "17XX/18XX", "18th\u201319th century"}));

INSTANTIATE_TEST_SUITE_P(Days, BookDateTyped,
                         testing::Values(Typed{"12 March 1612", "1612-03-12", "12 March 1612"},
                                         Typed{"March 12th, 1612", "1612-03-12", "12 March 1612"},
                                         Typed{"12. M\u00E4rz 1612", "1612-03-12", "12 March 1612"},
                                         Typed{"12.3.1612", "1612-03-12", "12 March 1612"},
                                         Typed{"Mar. 1612", "1612-03", "March 1612"},
                                         Typed{"mense Martii MDCXII", "1612-03", "March 1612"},
                                         Typed{"Winter, 1612", "1612-24", "winter 1612"},
                                         Typed{"February 1648/9", "1649-02", "February 1649"},
                                         Typed{"March-May 1612", "1612-03/1612-05",
                                               "March 1612 \u2013 May 1612"}));

struct Refused {
    const char* typed;
    TextProblem problem;
};

class BookDateRefused : public testing::TestWithParam<Refused> {};

TEST_P(BookDateRefused, isNoDate) {
    const auto date = parseBookDate(GetParam().typed);
    ASSERT_FALSE(date.has_value()) << date->edtf;
    EXPECT_EQ(date.error().problem, GetParam().problem);
}

INSTANTIATE_TEST_SUITE_P(All, BookDateRefused,
                         testing::Values(Refused{"", TextProblem::empty},
                                         Refused{"  ", TextProblem::empty},
                                         Refused{"[s.a.]", TextProblem::empty},
                                         Refused{"n.d.", TextProblem::empty},
                                         Refused{"1800-1750", TextProblem::outOfRange},
                                         Refused{"1990-02-30", TextProblem::outOfRange},
                                         Refused{"31 February 1612", TextProblem::malformed},
                                         Refused{"3/12/1612", TextProblem::notANumber},
                                         Refused{"842", TextProblem::malformed},
                                         Refused{"[1612", TextProblem::malformed},
                                         Refused{"civil", TextProblem::malformed},
                                         Refused{"mild", TextProblem::malformed},
                                         Refused{"some time ago", TextProblem::malformed}));

TEST(BookDate, coversYears) {
    const auto span = [](const char* edtf) { return yearsOf(BookDate{edtf}); };
    EXPECT_EQ(span("15XX")->first, 1500);
    EXPECT_EQ(span("15XX")->last, 1599);
    EXPECT_EQ(span("1702/1741")->last, 1741);
    EXPECT_EQ(span("[1655,1657]")->last, 1657);
    EXPECT_FALSE(span("1600/..").has_value());
    EXPECT_FALSE(span("[..1600]").has_value());
    EXPECT_FALSE(span("XXXX").has_value());
    EXPECT_FALSE(span("Y170000000002").has_value());
}

TEST(BookDate, holdsWhatItCannotReadAsItStands) {
    EXPECT_EQ(toText(BookDate{"156X-12-25"}), "156X-12-25");
}

// Whatever is typed, nothing breaks: cut, doubled and mixed pieces of dates.
TEST(BookDate, standsAnyText) {
    const std::string pieces[] = {"1612", "-",        "/",      "ca. ",   "?",    "[",     "]",
                                  "XVI",  " century", "s. ",    ".",      ",",    " and ", "\u2013",
                                  "16",   "\xC3",     "March ", "early ", " or ", "Y",     "..",
                                  "BC",   "M",        "\u0186", "i.e."};
    for (const auto& a : pieces) {
        for (const auto& b : pieces) {
            for (const auto& c : pieces) {
                const auto date = parseBookDate(a + b + c);
                if (date) {
                    ASSERT_EQ(parseBookDate(date->edtf), *date) << a + b + c;
                    static_cast<void>(toText(*date));
                }
            }
        }
    }
}

} // namespace
} // namespace headcap::core
