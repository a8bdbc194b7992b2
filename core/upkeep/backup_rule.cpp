#include "core/upkeep/backup_rule.h"

namespace headcap::core {
namespace {

// Clocks are put right by less than this, and no time zone reaches further.
constexpr std::chrono::hours kMostDrift{24};

} // namespace

std::optional<BackupDue> backupDue(const std::optional<Instant>& lastOutside, bool hasJobs,
                                   Instant now) {
    using Why = BackupDue::Why;
    if (!hasJobs) {
        return std::nullopt;
    }
    if (!lastOutside) {
        return BackupDue{Why::never};
    }
    if (*lastOutside > now + kMostDrift) {
        return BackupDue{Why::inTheFuture};
    }
    const auto age = now - *lastOutside;
    if (age <= kOutsideBackupEvery) {
        return std::nullopt;
    }
    return BackupDue{Why::tooOld,
                     static_cast<int>(std::chrono::floor<std::chrono::days>(age).count())};
}

} // namespace headcap::core
