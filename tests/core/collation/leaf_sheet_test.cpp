#include "core/collation/leaf_sheet.h"

#include <gtest/gtest.h>

#include "core/collation/folds.h"
#include "core/collation/walk.h"
#include "tests/support/fixed_clock.h"

namespace headcap::core {
namespace {

class LeafSheetTest : public testing::Test {
protected:
    tests::FixedClock clock{*instantFromIso("2031-04-02T10:00:00Z")};
    IdSource ids{clock, 19};
    LaidBook book = walkedBook("8°: A⁴ B-D⁸", "[8] 1-48 p.").book;

    LeafTask task(const char* technique, const char* leaves, const char* done = "") {
        LeafTask made{.id = ids.next<LeafTask>(), .job = ids.next<Job>()};
        made.technique = technique;
        made.leaves = leaves;
        made.done = done;
        return made;
    }
};

TEST_F(LeafSheetTest, turnsTheTasksRoundToLeavesWithTheirWork) {
    const LeafSheet sheet =
        sheetOf(book, {task("washing", "A1–B2", "A1–A4"), task("guarding", "A1, B2, p. 40")});
    ASSERT_EQ(sheet.leaves.size(), 7U);
    EXPECT_EQ(leafText(book, sheet.leaves.front().leaf), "A1");
    EXPECT_EQ(sheet.leaves.front().works, (std::vector<LeafWork>{{0, true}, {1, false}}));
    EXPECT_EQ(leafText(book, sheet.leaves.back().leaf), "D4");
    EXPECT_EQ(sheet.counts[0].leaves, 6);
    EXPECT_EQ(sheet.counts[0].done, 4);
    EXPECT_EQ(sheet.counts[1].leaves, 3);
}

TEST_F(LeafSheetTest, saysWhichTasksHaveNoPlaceInTheBook) {
    const LeafSheet sheet =
        sheetOf(book, {task("mending", "Z9"), task("mending", "B1", "B2"), task("mending", "B1")});
    EXPECT_FALSE(sheet.counts[0].isPlaced);
    EXPECT_TRUE(sheet.counts[1].doneElsewhere);
    EXPECT_FALSE(sheet.counts[2].doneElsewhere);
}

TEST_F(LeafSheetTest, ticksOneLeafAfterAnotherIntoTheShortestSet) {
    LeafTask one = task("washing", "gathering B");
    for (std::size_t leaf = 4; leaf < 12; ++leaf) {
        one.done = doneWith(book, one, {leaf}, true);
    }
    EXPECT_EQ(one.done, "gathering B");
    one.done = doneWith(book, one, {6}, false);
    EXPECT_EQ(one.done, "B1–B2, B4–B8");
    EXPECT_EQ(sheetOf(book, {one}).counts[0].done, 7);
}

TEST_F(LeafSheetTest, tickingAndUntickingComesBackToWhatWas) {
    const LeafTask one = task("washing", "A1–D8", "A2, C4");
    for (std::size_t leaf = 0; leaf < book.leaves.size(); ++leaf) {
        LeafTask ticked = one;
        ticked.done = doneWith(book, one, {leaf}, true);
        const bool was = leaf == 1 || leaf == 15;
        EXPECT_EQ(doneWith(book, ticked, {leaf}, was), one.done) << leaf;
    }
}

TEST_F(LeafSheetTest, saysWhatIsStillToDo) {
    LeafTask one = task("mending", "A2, B1–B4, C8", "A2, B2");
    EXPECT_EQ(progressText(book, one), "2 of 6 leaves done; to do: B1, B3–B4, C8");
    EXPECT_EQ(toDoOfGathering(book, one, 5), (std::vector<std::size_t>{6, 7}));
    one.done = doneWith(book, one, toDo(book, one), true);
    EXPECT_EQ(one.done, "A2, B1–B4, C8");
    EXPECT_EQ(progressText(book, one), "6 leaves done");
    EXPECT_EQ(progressText(book, task("mending", "Z9")), "");
}

} // namespace
} // namespace headcap::core
