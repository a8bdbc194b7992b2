// A book's place and its moves tell the same: common practice of any register of locations.
#include "core/custody/kept_at.h"

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

class KeptAtTest : public testing::Test {
protected:
    CustodyMove moved(const std::string& to, int hour) {
        return {.id = job.ids.next<CustodyMove>(),
                .job = job.file.job.id,
                .at = Instant{std::chrono::sys_days{
                          Day{std::chrono::year{2031}, std::chrono::March, std::chrono::day{5}}}} +
                      std::chrono::hours{hour},
                .fromPlace = "shelf 1",
                .toPlace = to};
    }
    tests::JobBuilder job;
};

TEST_F(KeptAtTest, aChangedPlaceIsAMoveOnRecord) {
    Job before = job.file.job;
    before.keptAt = "shelf 1";
    Job after = before;
    after.keptAt = "press 3";
    const auto move = moveBehind(before, after, std::nullopt, moved("", 9).at, job.ids);
    ASSERT_TRUE(move.has_value());
    EXPECT_EQ(move->fromPlace, "shelf 1");
    EXPECT_EQ(move->toPlace, "press 3");
    EXPECT_EQ(move->job, after.id);
    EXPECT_FALSE(moveBehind(after, after, std::nullopt, move->at, job.ids).has_value());
}

TEST_F(KeptAtTest, aMoveThatIsNotedPutsTheBookThere) {
    job.file.job.keptAt = "shelf 1";
    const CustodyMove move = moved("press 3", 9);
    const auto after = jobAfterMove(job.file, move);
    ASSERT_TRUE(after.has_value());
    EXPECT_EQ(after->keptAt, "press 3");
}

TEST_F(KeptAtTest, anEarlierMoveThatIsMendedMovesNothing) {
    CustodyMove first = moved("conservaton store", 9);
    const CustodyMove second = moved("press 3", 11);
    job.file.moves = {first, second};
    job.file.job.keptAt = "press 3";
    first.toPlace = "conservation store";
    EXPECT_FALSE(jobAfterMove(job.file, first).has_value());
    CustodyMove mended = second;
    mended.toPlace = "press 4";
    EXPECT_EQ(jobAfterMove(job.file, mended)->keptAt, "press 4");
}

} // namespace
} // namespace headcap::core
