// Whether what a workshop keeps would outlive its disk: where its backups stand, and the rule by
// which one outside it is wanted.
#pragma once

#include <chrono>
#include <optional>

#include "core/record/safe_keeping.h"

namespace headcap::core {

// The oldest a backup outside may be, and the oldest that work without one may be.
inline constexpr std::chrono::days kBackupWithin{7};

enum class BackupNeed {
    none,
    first,   // there never was one outside, and there is work older than that
    again,   // the last one outside is older than that
    undated, // the last one bears a time to come: a clock was wrong, and its age can't be told
};

[[nodiscard]] BackupNeed backupNeed(std::optional<Instant> lastOutside,
                                    std::optional<Instant> firstWork, Instant now);

// Whole days that have gone by.
[[nodiscard]] int daysSince(Instant then, Instant now);

struct BackupStanding {
    std::optional<Instant> outside{};
    std::optional<std::filesystem::path> outsideFolder{};
    std::optional<Instant> inside{};
    BackupNeed need = BackupNeed::none;
};

[[nodiscard]] BackupStanding backupStanding(const Upkeep& upkeep, Instant now);

} // namespace headcap::core
