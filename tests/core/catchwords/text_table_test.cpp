#include "core/catchwords/text_table.h"

#include <gtest/gtest.h>

#include "core/catchwords/page_table.h"

namespace headcap::core {
namespace {

TEST(TextTable, readsColumnsByNameInAnyOrder) {
    const TextTable table("\xEF\xBB\xBF"
                          "b\ta\textra\r\n1\t2\tx\r\n3\r\n\r\n\r\n");
    ASSERT_EQ(table.rowCount(), 2U);
    EXPECT_EQ(table.cell(0, *table.column("a")), "2");
    EXPECT_EQ(table.cell(1, *table.column("b")), "3");
    EXPECT_EQ(table.cell(1, *table.column("a")), "");
    EXPECT_EQ(table.column("c"), std::nullopt);
}

TEST(TextTable, keepsAnEmptyPageInTheMiddle) {
    const TextTable table("page_n\tsignature\n\t\n5\tA\n");
    ASSERT_EQ(table.rowCount(), 2U);
    EXPECT_EQ(table.cell(1, 1), "A");
}

TEST(PageTable, partsTheBooksInTheirOrder) {
    const TextTable table("book\tpage_n\tsignature\tcatchword\tfirst_words\truns_on\n"
                          "one\t1\tA\tand\tThe\tyes\none\t2\t\t\tand\t\ntwo\t1\tA\t\tA\tno\n");
    EXPECT_EQ(checkPageColumns(table), std::nullopt);
    const auto books = readPages(table);
    ASSERT_EQ(books.size(), 2U);
    EXPECT_EQ(books[0].book, "one");
    ASSERT_EQ(books[0].pages.size(), 2U);
    EXPECT_EQ(books[0].pages[0].runsOn, true);
    EXPECT_EQ(books[0].pages[1].runsOn, std::nullopt);
    EXPECT_EQ(books[1].pages[0].runsOn, false);
}

TEST(PageTable, saysWhichColumnIsMissing) {
    const auto error = checkPageColumns(TextTable("page_n\tsignature\tfirst_words\n"));
    ASSERT_TRUE(error);
    EXPECT_EQ(error->problem, PageTableProblem::columnMissing);
    EXPECT_EQ(error->column, "catchword");
    EXPECT_EQ(checkPageColumns(TextTable(""))->problem, PageTableProblem::noHeader);
}

} // namespace
} // namespace headcap::core
