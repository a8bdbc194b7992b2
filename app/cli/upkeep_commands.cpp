// What keeps a workshop safe: verify, backup, restore.
#include <algorithm>

#include <nlohmann/json.hpp>

#include "app/cli/commands.h"

namespace headcap::app::cli {
namespace {

const core::Progress kUnwatched = [](std::int64_t, std::int64_t) { return true; };

nlohmann::json toJson(const core::VerifyReport& report) {
    auto checked = nlohmann::json::object();
    for (const auto& [what, count] : report.checked) {
        checked[what] = count;
    }
    auto findings = nlohmann::json::array();
    for (const core::VerifyFinding& finding : report.findings) {
        findings.push_back({{"what", finding.what},
                            {"record", finding.record ? nlohmann::json(finding.record->id.text())
                                                      : nlohmann::json(nullptr)},
                            {"sentence", finding.sentence}});
    }
    return {{"clean", report.isClean()},
            {"checked", std::move(checked)},
            {"findings", std::move(findings)}};
}

// A workshop so damaged that it can't be opened is a finding too.
core::VerifyReport verified(const Call& call) {
    try {
        return call.openWorkshop()->stores().upkeep.verify(kUnwatched);
    } catch (const core::StoreError& error) {
        if (error.code() != core::StoreError::Code::truncated) {
            throw;
        }
        return {.checked = {},
                .findings = {{"database", std::nullopt,
                              "The database can't be opened: " + std::string{error.what()} + "."}}};
    }
}

bool isDamage(const core::VerifyFinding& finding) {
    return finding.what == "database" || finding.what == "journal" || finding.what == "record";
}

bool isFileFault(const core::VerifyFinding& finding) {
    return finding.what == "photograph" || finding.what == "attachment" || finding.what == "report";
}

// What can be done about it.
std::vector<std::string> helpFor(const core::VerifyReport& report) {
    std::vector<std::string> help;
    const auto& found = report.findings;
    if (std::any_of(found.begin(), found.end(), isDamage)) {
        help.emplace_back("What can be saved goes to a new workshop, from the latest backup and "
                          "the journal: headcap salvage DAMAGED NEWDIR");
    }
    if (std::any_of(found.begin(), found.end(), isFileFault)) {
        help.emplace_back("Files are put back by their hash from a backup or any folder: headcap "
                          "mend-files FROMDIR");
    }
    return help;
}

Exit verify(const Call& call) {
    const auto report = verified(call);
    if (call.wantsJson()) {
        auto json = toJson(report);
        json["help"] = helpFor(report);
        printLine(json.dump());
    } else {
        for (const auto& [what, count] : report.checked) {
            printLine("checked  " + what + ": " + std::to_string(count));
        }
        for (const core::VerifyFinding& finding : report.findings) {
            printLine("found    " + finding.sentence);
        }
        printLine(report.isClean() ? "The workshop is sound."
                                   : std::to_string(report.findings.size()) + " found.");
        for (const std::string& help : helpFor(report)) {
            printLine(help);
        }
    }
    return report.isClean() ? Exit::done : Exit::answerIsNo;
}

Exit backup(const Call& call) {
    const auto workshop = call.openWorkshop();
    const auto report =
        workshop->stores().upkeep.backup(call.words().front().toStdString(), kUnwatched);
    if (call.wantsJson()) {
        printLine(nlohmann::json{{"folder", report.folder.string()},
                                 {"files_copied", report.filesCopied},
                                 {"files_already_there", report.filesAlreadyThere},
                                 {"bytes_copied", report.bytesCopied}}
                      .dump());
    } else {
        printLine("Backed up to " + report.folder.string() +
                  " and checked: " + std::to_string(report.filesCopied) + " files copied, " +
                  std::to_string(report.filesAlreadyThere) + " were there already.");
    }
    return Exit::done;
}

Exit restore(const Call& call) {
    const QStringList words = call.words();
    (void)call.surroundings().workshops.restore(words[0].toStdString(), words[1].toStdString(),
                                                kUnwatched);
    if (call.wantsJson()) {
        printLine(nlohmann::json{{"folder", words[1].toStdString()}}.dump());
    } else {
        printLine("Restored to " + words[1].toStdString() + ".");
    }
    return Exit::done;
}

} // namespace

Command verifyCommand() {
    return {.name = QStringLiteral("verify"),
            .words = QString(),
            .purpose =
                QStringLiteral("checks the database, search index, journal, files and ledger"),
            .fewest = 0,
            .most = 0,
            .options = {},
            .run = verify};
}

Command backupCommand() {
    return {.name = QStringLiteral("backup"),
            .words = QStringLiteral("DIR"),
            .purpose = QStringLiteral("copies everything that DIR lacks, while people work"),
            .fewest = 1,
            .most = 1,
            .options = {},
            .run = backup};
}

Command restoreCommand() {
    return {.name = QStringLiteral("restore"),
            .words = QStringLiteral("DIR NEWDIR"),
            .purpose = QStringLiteral("makes a new workshop from a backup"),
            .fewest = 2,
            .most = 2,
            .options = {},
            .run = restore};
}

} // namespace headcap::app::cli
