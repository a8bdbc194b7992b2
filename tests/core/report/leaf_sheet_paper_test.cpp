#include "core/report/leaf_sheet_paper.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

class LeafSheetPaper : public testing::Test {
protected:
    tests::FinishedJob job;

    void task(const char* technique, const char* leaves, const char* done = "") {
        LeafTask made{.id = job.ids.next<LeafTask>(), .job = job.file.job.id, .part = {}};
        made.technique = technique;
        made.leaves = leaves;
        made.done = done;
        job.file.leafTasks.push_back(made);
    }
    std::vector<Table> tables() {
        std::vector<Table> found;
        for (const Section& section : leafSheetPaper(job.file, job.clock).sections) {
            for (const Block& block : section.blocks) {
                if (const auto* table = std::get_if<Table>(&block)) {
                    found.push_back(*table);
                }
            }
        }
        return found;
    }
    static std::string text(const TableRow& row) {
        std::string all;
        for (const auto& cell : row.cells) {
            all += (all.empty() ? "" : "|") + plainText(cell);
        }
        return all;
    }
};

TEST_F(LeafSheetPaper, hasABoxForEachPieceOfWorkOfEachLeaf) {
    task("tear_mending", "B2, C5", "B2");
    task("guarding", "C4–C5");
    const auto all = tables();
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all.front().columns[1].title, "Mending tears");
    std::vector<std::string> rows;
    std::ranges::transform(all.front().rows, std::back_inserter(rows), text);
    EXPECT_EQ(rows, (std::vector<std::string>{"B2|✓||", "C4||□|", "C5|□|□|"}));
}

TEST_F(LeafSheetPaper, manyKindsOfWorkGoIntoSeveralTables) {
    for (const char* technique : {"washing", "drying", "guarding", "tear_mending", "sizing"}) {
        task(technique, "B1–B2");
    }
    const auto all = tables();
    ASSERT_EQ(all.size(), 2U);
    for (const Table& table : all) {
        EXPECT_LE(table.columns.size(), 6U);
        for (const TableRow& row : table.rows) {
            EXPECT_EQ(row.cells.size(), table.columns.size());
        }
    }
}

TEST_F(LeafSheetPaper, saysWhereNothingIsToDo) {
    EXPECT_NE(plainText(leafSheetPaper(job.file, job.clock)).find("No work on single leaves"),
              std::string::npos);
    task("washing", "Z9");
    EXPECT_NE(plainText(leafSheetPaper(job.file, job.clock)).find("not found in this book"),
              std::string::npos);
}

} // namespace
} // namespace headcap::core
