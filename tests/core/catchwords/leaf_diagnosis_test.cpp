#include "core/catchwords/leaf_diagnosis.h"

#include <algorithm>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace headcap::core {
namespace {

using Kind = LeafFindingKind;

// An invented book: gatherings of four, three of their leaves signed, pages numbered from A1r.
struct InventedBook {
    std::vector<std::string> numbers, signatures, catchwords, firstWords;

    void add(std::string number, std::string signature, std::string catchword, std::string words) {
        numbers.push_back(std::move(number));
        signatures.push_back(std::move(signature));
        catchwords.push_back(std::move(catchword));
        firstWords.push_back(std::move(words));
    }

    [[nodiscard]] std::vector<PageRow> rows() const {
        std::vector<PageRow> rows;
        for (std::size_t at = 0; at < numbers.size(); ++at)
            rows.push_back({numbers[at], signatures[at], catchwords[at], firstWords[at]});
        return rows;
    }
};

// A word of its own for each page: no two begin alike.
std::string wordOfPage(int page) {
    static constexpr const char* kHeads[] = {"bar", "dol", "fen", "gim", "hus", "kra", "lod",
                                             "mep", "nir", "pou", "quo", "rab", "sed", "tif"};
    static constexpr const char* kTails[] = {"ander", "elich", "ingen", "osten", "ulast",
                                             "amber", "ermis", "ident", "oktor"};
    return std::string(kHeads[page % 14]) + kTails[(page / 14) % 9];
}

InventedBook inventedBook(int gatherings) {
    constexpr std::string_view kLetters = "ABCDEFGHIKLMNOPQRSTVXYZ";
    InventedBook book;
    const int pages = gatherings * 8;
    for (int page = 1; page <= pages; ++page) {
        const int leaf = (page - 1) / 2 % 4 + 1;
        std::string mark;
        if (page % 2 == 1 && leaf <= 3) {
            mark = kLetters[static_cast<std::size_t>((page - 1) / 8)];
            if (leaf > 1)
                mark += fmt::format(" {}", leaf);
        }
        book.add(fmt::format("{}", page), mark, page < pages ? wordOfPage(page + 1) : "",
                 wordOfPage(page) + " und weiter");
    }
    return book;
}

std::vector<PageRow> without(std::vector<PageRow> rows, int row, int count) {
    rows.erase(rows.begin() + row - 1, rows.begin() + row - 1 + count);
    return rows;
}

std::string told(const LeafDiagnosis& diagnosis) {
    std::string text;
    for (const LeafFinding& finding : diagnosis.findings)
        text += fmt::format("{} {}–{} {} {}; ", wordOf(finding.kind), finding.afterRow,
                            finding.beforeRow, finding.leaves, finding.sentence);
    return text;
}

TEST(Leaves, ofAPerfectBookGiveFormulaAndExtent) {
    const auto book = inventedBook(12);
    const auto diagnosis = diagnoseLeaves(book.rows());
    EXPECT_EQ(diagnosis.formula, "A-M⁴");
    EXPECT_EQ(diagnosis.extent, "96 p.");
    EXPECT_TRUE(diagnosis.findings.empty()) << told(diagnosis);
    ASSERT_EQ(diagnosis.gatherings.size(), 12U);
    EXPECT_EQ(diagnosis.gatherings[2].signature, "C");
    EXPECT_EQ(diagnosis.gatherings[2].firstRow, 17);
    EXPECT_EQ(diagnosis.gatherings[2].lastRow, 24);
    EXPECT_TRUE(diagnosis.gatherings[2].sure);
}

class LeafTakenOut : public testing::TestWithParam<int> {};

TEST_P(LeafTakenOut, isNamedInItsPlace) {
    const int row = GetParam();
    const auto book = inventedBook(12);
    const auto diagnosis = diagnoseLeaves(without(book.rows(), row, 2));
    ASSERT_EQ(diagnosis.findings.size(), 1U) << told(diagnosis);
    const LeafFinding& finding = diagnosis.findings[0];
    EXPECT_EQ(finding.kind, Kind::leafLacking);
    EXPECT_EQ(finding.afterRow, row - 1);
    EXPECT_EQ(finding.beforeRow, row);
    EXPECT_EQ(finding.leaves, 1);
    EXPECT_TRUE(finding.sure);
    const int leaf = (row - 1) / 2 % 4 + 1;
    const char letter = "ABCDEFGHIKLM"[(row - 1) / 8];
    EXPECT_NE(finding.sentence.find(fmt::format("{}{}", letter, leaf)), std::string::npos)
        << finding.sentence;
    EXPECT_NE(diagnosis.formula.find(fmt::format("(-{}{})", letter, leaf)), std::string::npos)
        << diagnosis.formula;
    EXPECT_NE(finding.sentence.find(fmt::format("conjugate is {}{}", letter, 5 - leaf)),
              std::string::npos)
        << finding.sentence;
    EXPECT_EQ(diagnosis.extent, "96 p.");
}

INSTANTIATE_TEST_SUITE_P(EveryLeafOfTwoGatherings, LeafTakenOut,
                         testing::Values(33, 35, 37, 39, 41, 43, 45, 47));

// Folds give leaves two by two (Gaskell, on gatherings): where neither numbers nor marks speak, an
// odd number of leaves bears out a catchword that is not met, and a catchword alone proves nothing.
TEST(Leaves, anOddNumberOfUnsignedOnesBearsOutABrokenCatchword) {
    InventedBook book;
    for (int page = 70; page < 78; ++page)
        book.add("", "", page < 77 ? wordOfPage(page + 1) : wordOfPage(1),
                 wordOfPage(page) + " und weiter");
    const InventedBook signedPart = inventedBook(6);
    for (const PageRow& page : signedPart.rows())
        book.add(std::string(page.number), std::string(page.signature), std::string(page.catchword),
                 std::string(page.firstWords));
    EXPECT_TRUE(diagnoseLeaves(book.rows()).findings.empty());
    const auto one = diagnoseLeaves(without(book.rows(), 3, 2));
    ASSERT_EQ(one.findings.size(), 1U) << told(one);
    EXPECT_EQ(one.findings.front().kind, Kind::leafLacking);
    EXPECT_EQ(one.findings.front().afterRow, 2);
    EXPECT_FALSE(one.findings.front().sure);
    book.catchwords[3] = "nirgends";
    const auto slip = diagnoseLeaves(book.rows());
    EXPECT_TRUE(std::ranges::none_of(slip.findings, [](const LeafFinding& finding) {
        return finding.kind == Kind::leafLacking;
    })) << told(slip);
}

TEST(Leaves, twoTogetherAreNamedTogether) {
    const auto book = inventedBook(12);
    const auto diagnosis = diagnoseLeaves(without(book.rows(), 35, 4));
    ASSERT_EQ(diagnosis.findings.size(), 1U) << told(diagnosis);
    EXPECT_EQ(diagnosis.findings[0].kind, Kind::leafLacking);
    EXPECT_EQ(diagnosis.findings[0].leaves, 2);
}

TEST(Leaves, ofAWholeGatheringAreMissed) {
    const auto book = inventedBook(12);
    const auto diagnosis = diagnoseLeaves(without(book.rows(), 33, 8));
    ASSERT_EQ(diagnosis.findings.size(), 1U) << told(diagnosis);
    EXPECT_EQ(diagnosis.findings[0].kind, Kind::leafLacking);
    EXPECT_EQ(diagnosis.findings[0].leaves, 4);
    EXPECT_EQ(diagnosis.findings[0].afterRow, 32);
    EXPECT_EQ(diagnosis.formula, "A-M⁴ (-E⁴)");
}

TEST(Leaves, misnumberedAreNotLacking) {
    auto book = inventedBook(12);
    for (std::size_t row = 50; row < book.numbers.size(); ++row)
        book.numbers[row] = fmt::format("{}", row + 3);
    const auto diagnosis = diagnoseLeaves(book.rows());
    ASSERT_EQ(diagnosis.findings.size(), 1U) << told(diagnosis);
    EXPECT_EQ(diagnosis.findings[0].kind, Kind::misnumbered);
    EXPECT_EQ(diagnosis.findings[0].afterRow, 50);
    EXPECT_EQ(diagnosis.findings[0].beforeRow, 51);
    EXPECT_EQ(diagnosis.extent, "98 [i.e. 96] p.");
}

TEST(Leaves, oneWrongNumberIsTold) {
    auto book = inventedBook(12);
    book.numbers[40] = "14";
    const auto diagnosis = diagnoseLeaves(book.rows());
    ASSERT_EQ(diagnosis.findings.size(), 1U) << told(diagnosis);
    EXPECT_EQ(diagnosis.findings[0].kind, Kind::misnumbered);
    EXPECT_EQ(diagnosis.findings[0].beforeRow, 41);
    EXPECT_NE(diagnosis.findings[0].sentence.find("14 for 41"), std::string::npos);
}

TEST(Leaves, missignedAreTold) {
    auto book = inventedBook(12);
    book.signatures[34] = "G 2";
    const auto diagnosis = diagnoseLeaves(book.rows());
    ASSERT_EQ(diagnosis.findings.size(), 1U) << told(diagnosis);
    EXPECT_EQ(diagnosis.findings[0].kind, Kind::missigned);
    EXPECT_EQ(diagnosis.findings[0].beforeRow, 35);
    EXPECT_NE(diagnosis.findings[0].sentence.find("E2"), std::string::npos);
}

TEST(Leaves, exchangedAreMisbound) {
    const auto book = inventedBook(12);
    auto rows = book.rows();
    std::rotate(rows.begin() + 34, rows.begin() + 36, rows.begin() + 38);
    const auto diagnosis = diagnoseLeaves(rows);
    ASSERT_EQ(diagnosis.findings.size(), 1U) << told(diagnosis);
    EXPECT_EQ(diagnosis.findings[0].kind, Kind::misbound);
    EXPECT_EQ(diagnosis.findings[0].afterRow, 34);
    EXPECT_EQ(diagnosis.findings[0].beforeRow, 39);
    EXPECT_EQ(diagnosis.formula, "A-M⁴");
}

TEST(Leaves, aGatheringInTheWrongPlaceIsMovedBack) {
    const auto book = inventedBook(12);
    auto rows = book.rows();
    // C is bound after G.
    std::rotate(rows.begin() + 16, rows.begin() + 24, rows.begin() + 56);
    const auto diagnosis = diagnoseLeaves(rows);
    ASSERT_EQ(diagnosis.findings.size(), 1U) << told(diagnosis);
    EXPECT_EQ(diagnosis.findings[0].kind, Kind::misbound);
    EXPECT_EQ(diagnosis.findings[0].leaves, 4);
    EXPECT_EQ(diagnosis.findings[0].afterRow, 48);
    EXPECT_EQ(diagnosis.findings[0].beforeRow, 57);
    EXPECT_NE(diagnosis.findings[0].sentence.find("before row 17"), std::string::npos)
        << diagnosis.findings[0].sentence;
}

TEST(Leaves, boundInTwiceAreDuplicates) {
    const auto book = inventedBook(12);
    auto rows = book.rows();
    const std::vector<PageRow> again(rows.begin() + 24, rows.begin() + 32);
    rows.insert(rows.begin() + 32, again.begin(), again.end());
    const auto diagnosis = diagnoseLeaves(rows);
    ASSERT_EQ(diagnosis.findings.size(), 1U) << told(diagnosis);
    EXPECT_EQ(diagnosis.findings[0].kind, Kind::duplicate);
    EXPECT_EQ(diagnosis.findings[0].leaves, 4);
    EXPECT_EQ(diagnosis.findings[0].afterRow, 32);
    EXPECT_EQ(diagnosis.formula, "A-M⁴");
}

TEST(Leaves, platesBetweenAreNotCounted) {
    const auto book = inventedBook(12);
    auto rows = book.rows();
    for (const int at : {72, 56, 40, 24})
        rows.insert(rows.begin() + at, 2, PageRow{});
    const auto diagnosis = diagnoseLeaves(rows);
    EXPECT_TRUE(diagnosis.findings.empty()) << told(diagnosis);
    EXPECT_EQ(diagnosis.formula, "A-M⁴");
}

TEST(Leaves, foliatedAreUnderstood) {
    auto book = inventedBook(12);
    for (std::size_t row = 0; row < book.numbers.size(); ++row)
        book.numbers[row] = row % 2 == 0 ? fmt::format("{}", row / 2 + 1) : "";
    EXPECT_EQ(diagnoseLeaves(book.rows()).extent, "48 leaves");
    const auto diagnosis = diagnoseLeaves(without(book.rows(), 37, 2));
    ASSERT_EQ(diagnosis.findings.size(), 1U) << told(diagnosis);
    EXPECT_EQ(diagnosis.findings[0].kind, Kind::leafLacking);
    EXPECT_NE(diagnosis.findings[0].sentence.find("f. 19"), std::string::npos)
        << diagnosis.findings[0].sentence;
}

// Bowers, Principles: brackets hold what is inferred. It is a reckoning, not what was printed.
TEST(Leaves, numbersInBracketsCountForLessThanPrintedOnes) {
    auto book = inventedBook(12);
    for (std::size_t row = 80; row < 96; ++row)
        book.numbers[row] = fmt::format("[{}]", book.numbers[row]);
    EXPECT_EQ(diagnoseLeaves(book.rows()).extent, "80, [16] p.");
    book.numbers[84] = "[35]";
    EXPECT_TRUE(diagnoseLeaves(book.rows()).findings.empty());
    for (std::size_t row = 84; row < 96; ++row)
        book.numbers[row] = fmt::format("[{}]", row + 3);
    const auto raised = diagnoseLeaves(book.rows());
    ASSERT_EQ(raised.findings.size(), 1U) << told(raised);
    EXPECT_EQ(raised.findings.front().kind, Kind::misnumbered);
    EXPECT_EQ(raised.findings.front().afterRow, 84);
}

// A plate stands where the leaf stood, and would make up both number and fold; the catchword tells.
TEST(Leaves, aPlateInItsPlaceDoesNotHideALostLeaf) {
    const auto book = inventedBook(12);
    auto rows = book.rows();
    rows.insert(rows.begin() + 36, 2, PageRow{});
    EXPECT_TRUE(diagnoseLeaves(rows).findings.empty());
    const auto diagnosis = diagnoseLeaves(without(rows, 39, 2));
    ASSERT_EQ(diagnosis.findings.size(), 1U) << told(diagnosis);
    EXPECT_EQ(diagnosis.findings.front().kind, Kind::leafLacking);
    EXPECT_EQ(diagnosis.findings.front().afterRow, 36);
    EXPECT_EQ(diagnosis.findings.front().beforeRow, 39);
    EXPECT_FALSE(diagnosis.findings.front().sure);
}

// Preliminaries signed with the leaves' numbers alone, behind a blank; no other evidence.
TEST(Leaves, marksThatPassOneOverTellOfIt) {
    InventedBook book;
    book.add("", "", "", "");
    book.add("", "", "", "");
    for (int leaf = 1; leaf <= 7; ++leaf) {
        const std::string mark = leaf > 1 && leaf < 6 ? fmt::format("{}", leaf) : "";
        book.add("", mark, "", wordOfPage(70 + 2 * leaf));
        book.add("", "", "", wordOfPage(71 + 2 * leaf));
    }
    const InventedBook signedPart = inventedBook(6);
    for (const PageRow& page : signedPart.rows())
        book.add(std::string(page.number), std::string(page.signature), std::string(page.catchword),
                 std::string(page.firstWords));
    EXPECT_TRUE(diagnoseLeaves(book.rows()).findings.empty()) << told(diagnoseLeaves(book.rows()));
    const auto diagnosis = diagnoseLeaves(without(book.rows(), 7, 2));
    ASSERT_EQ(diagnosis.findings.size(), 1U) << told(diagnosis);
    EXPECT_EQ(diagnosis.findings.front().kind, Kind::leafLacking);
    EXPECT_EQ(diagnosis.findings.front().afterRow, 6);
    EXPECT_FALSE(diagnosis.findings.front().sure);
}

// No catchwords: the collator reads whether the text runs on, and that counts as one.
TEST(Leaves, theCollatorsReadingStandsForACatchword) {
    auto book = inventedBook(12);
    for (std::size_t row = 0; row < book.numbers.size(); ++row)
        book.catchwords[row] = book.numbers[row] = "";
    auto rows = without(book.rows(), 37, 2);
    rows[35].runsOn = false;
    const auto diagnosis = diagnoseLeaves(rows);
    ASSERT_EQ(diagnosis.findings.size(), 1U) << told(diagnosis);
    EXPECT_EQ(diagnosis.findings[0].kind, Kind::leafLacking);
    EXPECT_EQ(diagnosis.findings[0].afterRow, 36);
}

TEST(Leaves, ofNoBookAreNone) {
    EXPECT_TRUE(diagnoseLeaves({}).findings.empty());
    const std::vector<PageRow> bare(7);
    EXPECT_TRUE(diagnoseLeaves(bare).findings.empty());
}

TEST(LeavesAsJson, bearTheKeysThatTheCommandLinePromises) {
    const auto book = inventedBook(12);
    const auto json = toJson(diagnoseLeaves(without(book.rows(), 37, 2)), "invented");
    EXPECT_EQ(json["book"], "invented");
    for (const char* key : {"formula", "extent", "gatherings", "findings"})
        EXPECT_TRUE(json.contains(key)) << key;
    const auto& finding = json["findings"][0];
    EXPECT_EQ(finding["kind"], "leaf_lacking");
    EXPECT_EQ(finding["after_row"], 36);
    EXPECT_EQ(finding["before_row"], 37);
    EXPECT_EQ(finding["leaves"], 1);
    EXPECT_EQ(finding["confidence"], "sure");
}

} // namespace
} // namespace headcap::core
