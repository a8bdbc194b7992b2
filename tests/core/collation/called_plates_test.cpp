#include "core/collation/called_plates.h"

#include <gtest/gtest.h>

#include "core/collation/walk.h"
#include "tests/support/fixed_clock.h"

namespace headcap::core {
namespace {

class CalledPlatesTest : public testing::Test {
protected:
    tests::FixedClock clock{*instantFromIso("2031-04-02T10:00:00Z")};
    IdSource ids{clock, 23};
    LaidBook book = walkedBook("8°: A⁴ B-D⁸", "[8] 1-48 p.").book;
    std::vector<CalledPlate> plates;

    void plate(const char* name, const char* at, PlatePresence presence = PlatePresence::present) {
        CalledPlate made{.id = ids.next<CalledPlate>(), .job = ids.next<Job>()};
        made.name = name;
        made.belongsAt = at;
        made.presence = presence;
        plates.push_back(made);
    }
    std::string remark(std::size_t at) { return remarkOn(checkPlates(book, plates), plates, at); }
};

TEST_F(CalledPlatesTest, countsThoseCalledForAndThoseThere) {
    plate("frontispiece", "frontispiece");
    plate("1", "to face p. 9");
    plate("2", "to face p. 34", PlatePresence::lacking);
    plate("3", "at end", PlatePresence::supplied);
    const PlateCheck check = checkPlates(book, plates);
    EXPECT_EQ(check.called, 4);
    EXPECT_EQ(check.present, 3);
    EXPECT_EQ(remark(1), "");
}

TEST_F(CalledPlatesTest, checksEachPlaceAgainstTheMakeUp) {
    plate("1", "to face p. 34");
    plate("2", "to face p. 9");
    plate("3", "to face p. 400");
    plate("3", "");
    EXPECT_EQ(remark(0), "");
    EXPECT_EQ(remark(1), "it belongs before the one listed ahead of it");
    EXPECT_EQ(remark(2), "its place is not in this book's make-up");
    EXPECT_EQ(remark(3), "another is called the same; where it belongs is not said");
    plate("4", "to face A1r of the first work");
    EXPECT_EQ(remark(4), "where it belongs is not understood; say it like “to face A1r”");
}

} // namespace
} // namespace headcap::core
