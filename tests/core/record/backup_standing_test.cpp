#include "core/record/backup_standing.h"

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

using namespace std::chrono_literals;

const Instant kNow = *instantFromIso("2031-03-06T08:03:00Z");
constexpr auto kWeek = 7 * 24h;

TEST(BackupNeed, anEmptyOrYoungWorkshopNeedsNone) {
    EXPECT_EQ(backupNeed({}, {}, kNow), BackupNeed::none);
    EXPECT_EQ(backupNeed({}, kNow - kWeek, kNow), BackupNeed::none);
}

TEST(BackupNeed, workOverSevenDaysOldNeedsAFirstOne) {
    EXPECT_EQ(backupNeed({}, kNow - kWeek - 1ms, kNow), BackupNeed::first);
}

TEST(BackupNeed, isTheLastOnesAgeOnceThereIsOne) {
    const Instant longAgo = kNow - 1'000 * 24h;
    EXPECT_EQ(backupNeed(kNow, longAgo, kNow), BackupNeed::none);
    EXPECT_EQ(backupNeed(kNow - kWeek, longAgo, kNow), BackupNeed::none);
    EXPECT_EQ(backupNeed(kNow - kWeek - 1ms, longAgo, kNow), BackupNeed::again);
    EXPECT_EQ(backupNeed(kNow - 400 * 24h, longAgo, kNow), BackupNeed::again);
}

TEST(BackupNeed, aTimeToComeProvesNothing) {
    EXPECT_EQ(backupNeed(kNow + 12h, {}, kNow), BackupNeed::none) << "another machine's clock";
    EXPECT_EQ(backupNeed(kNow + 25h, {}, kNow), BackupNeed::undated);
}

TEST(BackupNeed, countsWholeDays) {
    EXPECT_EQ(daysSince(kNow - 9 * 24h - 23h, kNow), 9);
    EXPECT_EQ(daysSince(kNow, kNow), 0);
}

} // namespace
} // namespace headcap::core
