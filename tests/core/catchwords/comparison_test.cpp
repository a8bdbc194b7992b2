#include "core/catchwords/comparison.h"

#include <random>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/catchwords/catchword_answer.h"
#include "core/catchwords/text_table.h"
#include "tests/support/reference_file.h"

namespace headcap::core {
namespace {

using Verdict = CatchwordVerdict;

struct Pair {
    const char* catchword;
    const char* next;
    Verdict verdict;
    const char* before = "";
    const char* head = "";
};

class ComparedCatchword : public testing::TestWithParam<Pair> {};

TEST_P(ComparedCatchword, isGradedAsAReaderWould) {
    const Pair& pair = GetParam();
    const auto found = compareCatchword({pair.catchword, pair.next, pair.before, pair.head});
    EXPECT_EQ(found.verdict, pair.verdict)
        << pair.catchword << " | " << pair.next << ": " << sentenceOf(found.reason);
}

// Letter forms of the handpress period; the words are made up.
INSTANTIATE_TEST_SUITE_P(Same, ComparedCatchword,
                         testing::Values(Pair{"nesse", "neſſe of heart", Verdict::same},
                                         Pair{"Wam-", "Wampen wol angefuͤllt", Verdict::same},
                                         Pair{"Zei", "Zeichen und", Verdict::same},
                                         Pair{"THE", "The second Booke", Verdict::same},
                                         Pair{"ge-", "ge-\nben wird", Verdict::same},
                                         Pair{"ſich,", "ſich: und", Verdict::same},
                                         Pair{"da von", "davon aber", Verdict::same},
                                         Pair{"ſchoͤn", "ſchön und gut", Verdict::same},
                                         Pair{"AS", "A␊S the Sunne", Verdict::same},
                                         Pair{"Cæſar", "Caeſar came", Verdict::same},
                                         Pair{"§. 13.", "§. 13. Von den", Verdict::same},
                                         Pair{"H. Geist/", "H. Geiſt/ vnd", Verdict::same}));
INSTANTIATE_TEST_SUITE_P(
    Variant, ComparedCatchword,
    testing::Values(
        Pair{"vpon", "upon the", Verdict::variant}, Pair{"iudge", "judge the", Verdict::variant},
        Pair{"vvith", "with all", Verdict::variant}, Pair{"quãdo", "quando el", Verdict::variant},
        Pair{"rationē", "rationem habet", Verdict::variant}, Pair{"&", "et alia", Verdict::variant},
        Pair{"ꝙ", "quod erat", Verdict::variant}, Pair{"tñ", "tamen non", Verdict::variant},
        Pair{"vnnd", "vnd alſo", Verdict::variant},
        Pair{"Merchandize", "Merchandise is", Verdict::variant},
        Pair{"governement", "government of", Verdict::variant},
        Pair{"Jnſel", "Jnſul Ruͤgen", Verdict::variant},
        Pair{"Deſcription", "CHAP. IV.␊Deſcription of", Verdict::variant},
        Pair{"Then", "hen came they", Verdict::variant},
        Pair{"machen", "chen laſſen", Verdict::variant, "und er will ma-"},
        Pair{"Winter", "Of Seaſons Winter comes", Verdict::variant, "", "Of Seaſons"}));
INSTANTIATE_TEST_SUITE_P(Not, ComparedCatchword,
                         testing::Values(Pair{"the", "and when they", Verdict::different},
                                         Pair{"his", "this was", Verdict::different},
                                         Pair{"§. 12.", "§. 21. Von", Verdict::different},
                                         Pair{"11", "1 und", Verdict::different},
                                         Pair{"hand", "band of", Verdict::different},
                                         Pair{"(b) Auf", "Die Felder", Verdict::doubtful},
                                         Pair{"", "and so", Verdict::doubtful},
                                         Pair{"and", "", Verdict::doubtful},
                                         Pair{"wo", "wodurch ſie", Verdict::doubtful}));

TEST(Catchwords, readBadBytesWithoutHarm) {
    const std::string broken = "\xFF\xC3 a\xE2\x82";
    EXPECT_NO_THROW(static_cast<void>(compareCatchword({broken, broken})));
}

TEST(Catchwords, ofATableAreCountedByVerdict) {
    const TextTable table("next_first_words\tcatchword\nand so\tand\nfor\tthe\n");
    const auto answer = compareCatchwords(table);
    ASSERT_TRUE(answer);
    ASSERT_EQ(answer->rows.size(), 2U);
    EXPECT_EQ(answer->rows[0].verdict, Verdict::same);
    EXPECT_EQ(answer->rows[1].verdict, Verdict::different);
    EXPECT_EQ(answer->counts, (std::array<std::size_t, 4>{1, 0, 0, 1}));
    EXPECT_FALSE(answer->allMeet());
}

TEST(Catchwords, wantTheirColumns) {
    const auto answer = compareCatchwords(TextTable("catchword\tpage\nand\t1\n"));
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().problem, PageTableProblem::columnMissing);
    EXPECT_EQ(answer.error().column, "next_first_words");
    EXPECT_EQ(compareCatchwords(TextTable("")).error().problem, PageTableProblem::noHeader);
}

// German books of 1603–1839: catchwords with the next page's first words (catchwords.tsv).
class PrintedCatchwords : public testing::Test {
protected:
    void SetUp() override {
        m_text = tests::readReference("catchwords.tsv");
        if (!m_text)
            GTEST_SKIP() << "catchwords.tsv is not in " << HEADCAP_REFERENCE_DIR;
    }
    std::optional<std::string> m_text;
};

TEST_F(PrintedCatchwords, meetTheNextPage) {
    const TextTable table(*m_text);
    const auto answer = compareCatchwords(table);
    ASSERT_TRUE(answer);
    const auto good = static_cast<double>(answer->counts[0] + answer->counts[1]);
    EXPECT_GE(good / static_cast<double>(table.rowCount()), 0.98);
}

TEST_F(PrintedCatchwords, seldomMeetAnotherPageOfTheBook) {
    const TextTable table(*m_text);
    std::vector<std::vector<std::size_t>> books;
    const auto book = *table.column("book");
    std::string_view last;
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        if (books.empty() || table.cell(row, book) != last)
            books.emplace_back();
        last = table.cell(row, book);
        books.back().push_back(row);
    }
    const auto catchword = *table.column("catchword");
    const auto next = *table.column("next_first_words");
    std::mt19937 random(1603);
    int trials = 0;
    int agreed = 0;
    std::vector<std::size_t> all(table.rowCount());
    for (const auto& rows : books) {
        for (const std::size_t row : rows) {
            const std::size_t other = rows[random() % rows.size()];
            if (other == row)
                continue;
            ++trials;
            const auto found =
                compareCatchword({table.cell(row, catchword), table.cell(other, next)});
            agreed += found.verdict <= Verdict::variant ? 1 : 0;
        }
    }
    EXPECT_GT(trials, 1000);
    EXPECT_LE(agreed, trials / 100);
}

// Latin and Spanish words as printed, abbreviated, and written out, 1522–1630 (abbreviations.tsv).
TEST(Abbreviations, areReadAsWhatTheyStandFor) {
    const auto text = tests::readReference("text/abbreviations.tsv");
    if (!text)
        GTEST_SKIP() << "text/abbreviations.tsv is not in " << HEADCAP_REFERENCE_DIR;
    const TextTable table(*text);
    const auto printed = *table.column("printed");
    const auto expanded = *table.column("expanded");
    std::size_t read = 0;
    std::size_t confused = 0;
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        const auto agrees = [&](std::size_t other) {
            return compareCatchword({table.cell(row, printed), table.cell(other, expanded)})
                       .verdict <= Verdict::variant;
        };
        read += agrees(row) ? 1 : 0;
        confused += agrees((row + 997) % table.rowCount()) ? 1 : 0;
    }
    EXPECT_GE(static_cast<double>(read) / static_cast<double>(table.rowCount()), 0.93);
    EXPECT_LE(static_cast<double>(confused) / static_cast<double>(table.rowCount()), 0.01);
}

} // namespace
} // namespace headcap::core
