// Seven days is the rule; it is common practice, not a standard's figure.
#include <gtest/gtest.h>

#include "core/upkeep/backup_rule.h"

namespace headcap::core {
namespace {

using namespace std::chrono_literals;
using Why = BackupDue::Why;

const Instant kNow = *instantFromIso("2031-03-06T08:03:00Z");

TEST(BackupRule, saysNothingWhereThereIsNothingToLose) {
    EXPECT_EQ(backupDue(std::nullopt, false, kNow), std::nullopt);
    EXPECT_EQ(backupDue(kNow - 24h * 400, false, kNow), std::nullopt);
}

TEST(BackupRule, asksForTheFirst) {
    EXPECT_EQ(backupDue(std::nullopt, true, kNow), (BackupDue{Why::never}));
}

TEST(BackupRule, sevenDaysAreRecentEnoughAndAMomentMoreIsNot) {
    EXPECT_EQ(backupDue(kNow, true, kNow), std::nullopt);
    EXPECT_EQ(backupDue(kNow - 24h * 7, true, kNow), std::nullopt);
    EXPECT_EQ(backupDue(kNow - 24h * 7 - 1ms, true, kNow), (BackupDue{Why::tooOld, 7}));
    EXPECT_EQ(backupDue(kNow - 24h * 30 - 5h, true, kNow), (BackupDue{Why::tooOld, 30}));
}

TEST(BackupRule, aClockThatWasWrongDoesNotSilenceIt) {
    EXPECT_EQ(backupDue(kNow + 2h, true, kNow), std::nullopt) << "put right by a little";
    EXPECT_EQ(backupDue(kNow + 24h * 365, true, kNow), (BackupDue{Why::inTheFuture}));
}

} // namespace
} // namespace headcap::core
