// What is done when damage was found: a new workshop of what can be saved, and files put back.
#include <nlohmann/json.hpp>

#include "app/cli/commands.h"

namespace headcap::app::cli {
namespace {

const core::Progress kUnwatched = [](std::int64_t, std::int64_t) { return true; };

nlohmann::json sentencesOf(const std::vector<core::VerifyFinding>& findings) {
    auto sentences = nlohmann::json::array();
    for (const core::VerifyFinding& finding : findings) {
        sentences.push_back(finding.sentence);
    }
    return sentences;
}

void printFound(const std::vector<core::VerifyFinding>& findings) {
    for (const core::VerifyFinding& finding : findings) {
        printLine("found    " + finding.sentence);
    }
}

void printSalvaged(const core::SalvageReport& report, const std::string& folder) {
    printLine(report.base.empty()
                  ? "No backup could be used."
                  : "Began with " + report.base.string() + ", " +
                        std::to_string(report.entriesOfBase) + " entries of the journal.");
    printLine(std::to_string(report.entriesReplayed) +
              " entries were done again from the damaged journal, each proved by its hash.");
    if (report.recordsPutBack > 0) {
        printLine(std::to_string(report.recordsPutBack) +
                  " records were put back where the journal could not be followed.");
    }
    printLine(std::to_string(report.filesCopied) + " files were copied, each checked.");
    for (const std::string& lost : report.lost) {
        printLine("lost     " + lost);
    }
    printFound(report.check.findings);
    printLine((report.isWhole() ? "Everything was saved, in " : "What can be saved is in ") +
              folder + ". The damaged workshop was not touched.");
}

Exit salvage(const Call& call) {
    const std::string damaged = call.words()[0].toStdString();
    const std::string folder = call.words()[1].toStdString();
    std::vector<std::filesystem::path> backups;
    for (const QString& backup : call.words().mid(2)) {
        backups.emplace_back(backup.toStdString());
    }
    const auto report = call.surroundings().workshops.salvage(damaged, folder, backups, kUnwatched);
    if (call.wantsJson()) {
        printLine(nlohmann::json{
            {"folder", folder},
            {"base", report.base.empty() ? nlohmann::json(nullptr) : nlohmann::json(report.base)},
            {"entries_of_base", report.entriesOfBase},
            {"entries_replayed", report.entriesReplayed},
            {"records_put_back", report.recordsPutBack},
            {"files_copied", report.filesCopied},
            {"lost", report.lost},
            {"findings", sentencesOf(report.check.findings)},
            {"whole", report.isWhole()}}
                      .dump());
    } else {
        printSalvaged(report, folder);
    }
    return report.isWhole() ? Exit::done : Exit::answerIsNo;
}

Exit mendFiles(const Call& call) {
    const std::filesystem::path from{call.words().front().toStdString()};
    if (!std::filesystem::is_directory(from)) {
        throw Failure{Exit::inputUnusable, "there is no folder " + from.string() + "."};
    }
    const auto workshop = call.openWorkshop();
    const auto report = core::safeKeepingOf(workshop->stores().upkeep)->mendFiles(from, kUnwatched);
    if (call.wantsJson()) {
        printLine(nlohmann::json{{"mended", sentencesOf(report.mended)},
                                 {"left", sentencesOf(report.left)},
                                 {"files_looked_at", report.filesLookedAt}}
                      .dump());
    } else {
        for (const core::VerifyFinding& mended : report.mended) {
            printLine("put back " + mended.sentence);
        }
        printFound(report.left);
        printLine(report.mended.empty() && report.left.empty()
                      ? "No file was missing or altered."
                      : std::to_string(report.mended.size()) + " put back, " +
                            std::to_string(report.left.size()) + " not found.");
    }
    return report.left.empty() ? Exit::done : Exit::answerIsNo;
}

} // namespace

Command salvageCommand() {
    return {.name = QStringLiteral("salvage"),
            .words = QStringLiteral("DAMAGED NEWDIR [BACKUP …]"),
            .purpose = QStringLiteral("makes a new workshop of what can be saved of a damaged one"),
            .fewest = 2,
            .most = -1,
            .options = {},
            .run = salvage};
}

Command mendFilesCommand() {
    return {.name = QStringLiteral("mend-files"),
            .words = QStringLiteral("FROMDIR"),
            .purpose = QStringLiteral("puts back files that are missing or altered, by their hash, "
                                      "from a backup or any folder"),
            .fewest = 1,
            .most = 1,
            .options = {},
            .run = mendFiles};
}

} // namespace headcap::app::cli
