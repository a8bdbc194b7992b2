// When somebody is to be told that the workshop has no recent backup outside itself: a backup that
// lies on the same disk is lost with it.
#pragma once

#include <chrono>
#include <optional>

#include "core/values/time.h"

namespace headcap::core {

inline constexpr std::chrono::days kOutsideBackupEvery{7};

struct BackupDue {
    enum class Why {
        never,
        tooOld,
        inTheFuture, // the clock was or is wrong: how old it is can't be told
    };
    Why why;
    int days = 0; // whole days since the last one, where it is too old
    friend bool operator==(const BackupDue&, const BackupDue&) = default;
};

// Nothing: it is recent enough, or there is no job yet that could be lost.
[[nodiscard]] std::optional<BackupDue> backupDue(const std::optional<Instant>& lastOutside,
                                                 bool hasJobs, Instant now);

} // namespace headcap::core
