// The subcommands, one source each.
#pragma once

#include "app/cli/command.h"

namespace headcap::app::cli {

[[nodiscard]] Command demoCommand();
[[nodiscard]] Command collateCommand();
[[nodiscard]] Command catchwordsCommand();
[[nodiscard]] Command leavesCommand();
[[nodiscard]] Command cutCommand();
[[nodiscard]] Command auditCommand();
[[nodiscard]] Command reportCommand();
[[nodiscard]] Command issueCommand();
[[nodiscard]] Command findCommand();
[[nodiscard]] Command traceCommand();
[[nodiscard]] Command verifyCommand();
[[nodiscard]] Command backupCommand();
[[nodiscard]] Command restoreCommand();
[[nodiscard]] Command salvageCommand();
[[nodiscard]] Command mendFilesCommand();

} // namespace headcap::app::cli
