// What is said of backups: how they stand, how far one is, what came of it.
#pragma once

#include <QString>

#include "app/keeping/keeping_work.h"
#include "core/record/backup_standing.h"

namespace headcap::app {

// The rule's answer: the worklist's line where a backup is wanted, empty where none is.
[[nodiscard]] QString needWords(const core::BackupStanding& standing, core::Instant now);
// "Tuesday 25 February 2031, 17:10, 9 days ago"; of none, the words given.
[[nodiscard]] QString whenWords(const std::optional<core::Instant>& at, const core::Clock& clock,
                                const QString& never);
// Of the files; total 0: the records are being copied.
[[nodiscard]] QString progressWords(KeepingWork::Kind kind, qint64 done, qint64 total);
[[nodiscard]] QString outcomeWords(const KeepingWork::Outcome& outcome);

// Where the folder of the last backup lies, found without making the window wait.
struct OutsidePlace {
    bool isThere = false;
    bool isSameDisk = false;
};
[[nodiscard]] OutsidePlace lookAt(const std::filesystem::path& outside,
                                  const std::filesystem::path& workshop);
[[nodiscard]] QString placeWords(const OutsidePlace& place);

} // namespace headcap::app
