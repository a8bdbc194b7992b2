#include "app/cli/commands.h"

namespace headcap::app::cli {

std::vector<Command> allCommands() {
    return {demoCommand(),    collateCommand(), catchwordsCommand(), leavesCommand(),
            cutCommand(),     auditCommand(),   reportCommand(),     issueCommand(),
            findCommand(),    traceCommand(),   verifyCommand(),     backupCommand(),
            restoreCommand(), salvageCommand(), mendFilesCommand()};
}

} // namespace headcap::app::cli
