// What else keeps a workshop safe, beyond checking it and backing it up: where its backups are, the
// files that are missing put back, a backup restored.
#pragma once

#include "core/record/stores.h"

namespace headcap::core {

// Files that were missing or altered, put back by their digests.
struct MendReport {
    std::vector<VerifyFinding> mended{}; // each as verify named it before
    std::vector<VerifyFinding> left{};   // those for which nothing was found
    std::int64_t filesLookedAt = 0;
    bool wasStopped = false;
};

class SafeKeeping {
public:
    virtual ~SafeKeeping() = default;
    // The newest of the copies made by themselves inside the workshop.
    [[nodiscard]] virtual std::optional<Instant> lastInsideBackup() const = 0;
    // Where the last backup outside went.
    [[nodiscard]] virtual std::optional<std::filesystem::path> outsideFolder() const = 0;
    // When the first thing was put on record here.
    [[nodiscard]] virtual std::optional<Instant> firstWork() const = 0;
    // Looks through a folder, a backup or any other, for the files that verify would miss.
    virtual MendReport mendFiles(const std::filesystem::path& from, const Progress& progress) = 0;
    // A new workshop from a backup, in a folder that is missing or empty. False: it was stopped,
    // and the folder is as empty as it was.
    virtual bool restore(const std::filesystem::path& backup, const std::filesystem::path& folder,
                         const Progress& progress) = 0;
};

// That of an open workshop; null where its store has none (one that is kept in memory).
[[nodiscard]] inline SafeKeeping* safeKeepingOf(Upkeep& upkeep) {
    return dynamic_cast<SafeKeeping*>(&upkeep);
}

} // namespace headcap::core
