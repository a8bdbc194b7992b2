// What is said of backups: when the last was, and that one is due.
#pragma once

#include <QString>

#include "app/session/session.h"
#include "core/record/safe_keeping.h"
#include "core/upkeep/backup_rule.h"

namespace headcap::app {

// "Thursday 27 February 2031, 18:10 (7 days ago)"; that there is none.
[[nodiscard]] QString lastBackupWords(const std::optional<core::Instant>& last,
                                      const core::Clock& clock);
// What the worklist says; empty: nothing is due.
[[nodiscard]] QString backupDueWords(const core::Stores& stores, const core::Clock& clock);

[[nodiscard]] QString sentence(const core::BackupReport& report);
// One line a finding, after a line that says how many; or that all is sound.
[[nodiscard]] QStringList linesOf(const core::VerifyReport& report);
[[nodiscard]] QStringList linesOf(const core::MendReport& report);

} // namespace headcap::app
