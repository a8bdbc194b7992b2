#include <nlohmann/json.hpp>

#include "app/cli/commands.h"

namespace headcap::app::cli {
namespace {

Exit run(const Call& call) {
    const std::filesystem::path folder{call.words().front().toStdString()};
    std::error_code unreadable;
    if (std::filesystem::exists(folder) && !std::filesystem::is_empty(folder, unreadable)) {
        throw Failure{Exit::inputUnusable,
                      folder.string() + " is not empty; the demo needs a folder of its own."};
    }
    const std::string job = call.surroundings().buildDemo(folder);
    if (call.wantsJson()) {
        printLine(nlohmann::json{{"workshop", folder.string()}, {"finished_job", job}}.dump());
    } else {
        printLine("The demo workshop lies in " + folder.string() + "; its finished job is " + job +
                  ".");
    }
    return Exit::done;
}

} // namespace

Command demoCommand() {
    return {.name = QStringLiteral("demo"),
            .words = QStringLiteral("DIR"),
            .purpose = QStringLiteral("builds the demo workshop, an invented bindery, in DIR"),
            .fewest = 1,
            .most = 1,
            .options = {},
            .run = run};
}

} // namespace headcap::app::cli
