#include "core/record/backup_standing.h"

namespace headcap::core {
namespace {

// Clocks of two machines differ, but not by a day.
constexpr std::chrono::days kClocksDiffer{1};

} // namespace

int daysSince(Instant then, Instant now) {
    return static_cast<int>(std::chrono::floor<std::chrono::days>(now - then).count());
}

BackupNeed backupNeed(std::optional<Instant> lastOutside, std::optional<Instant> firstWork,
                      Instant now) {
    if (!lastOutside) {
        return firstWork && now - *firstWork > kBackupWithin ? BackupNeed::first : BackupNeed::none;
    }
    if (*lastOutside - now > kClocksDiffer) {
        return BackupNeed::undated;
    }
    return now - *lastOutside > kBackupWithin ? BackupNeed::again : BackupNeed::none;
}

BackupStanding backupStanding(const Upkeep& upkeep, Instant now) {
    const auto* keeping = dynamic_cast<const SafeKeeping*>(&upkeep);
    if (keeping == nullptr) {
        return {};
    }
    return {.outside = upkeep.lastOutsideBackup(),
            .outsideFolder = keeping->outsideFolder(),
            .inside = keeping->lastInsideBackup(),
            .need = backupNeed(upkeep.lastOutsideBackup(), keeping->firstWork(), now)};
}

} // namespace headcap::core
