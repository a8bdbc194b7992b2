// What needs no workshop and knows books: collate, catchwords, leaves.
#include <algorithm>

#include <nlohmann/json.hpp>

#include "app/cli/commands.h"
#include "app/cli/text_file.h"
#include "core/catchwords/catchword_answer.h"
#include "core/catchwords/leaf_diagnosis.h"
#include "core/catchwords/page_table.h"
#include "core/catchwords/text_table.h"
#include "core/collation/collate.h"

namespace headcap::app::cli {
namespace {

const QString kFile = QStringLiteral("file");
const QString kExtent = QStringLiteral("extent");
const QString kFormat = QStringLiteral("format");

void print(const core::CollateAnswer& answer) {
    printLine(answer.formula);
    printLine(answer.leafTotal ? std::to_string(*answer.leafTotal) + " leaves called for" +
                                     (answer.presentTotal != answer.leafTotal
                                          ? ", " + std::to_string(*answer.presentTotal) + " present"
                                          : std::string{})
                               : std::string{"the number of leaves is not known"});
    if (answer.extent) {
        printLine(std::string{answer.extent->agrees ? "the extent agrees" : "the extent differs"});
        if (!answer.extent->explanation.empty()) {
            printLine(answer.extent->explanation);
        }
    }
    for (const core::Assumption& assumption : answer.assumptions) {
        printLine("taken as said: " + assumption.what);
    }
    for (const core::ReadingProblem& problem : answer.problems) {
        printLine("not read: " + problem.message);
    }
}

Exit collateTable(const QString& path) {
    const std::string text = textOf(path);
    const core::TextTable table{text};
    const auto formula = table.column("formula");
    if (!formula) {
        throw Failure{Exit::inputUnusable,
                      path.toStdString() + " has no column “formula” in its first line."};
    }
    const auto extent = table.column("extent");
    const auto format = table.column("format");
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        const core::CollateRequest request{.formula = std::string{table.cell(row, *formula)},
                                           .extent = std::string{table.cell(row, extent)},
                                           .format = std::string{table.cell(row, format)}};
        printLine(core::toJson(core::collate(request), request).dump());
    }
    return Exit::done;
}

Exit collate(const Call& call) {
    if (call.has(kFile)) {
        return collateTable(call.option(kFile));
    }
    if (call.words().isEmpty()) {
        throw Failure{Exit::inputUnusable, "give a formula, or --file TABLE.tsv."};
    }
    const core::CollateRequest request{.formula = call.words().join(u' ').toStdString(),
                                       .extent = call.option(kExtent).toStdString(),
                                       .format = call.option(kFormat).toStdString()};
    const auto answer = core::collate(request);
    if (call.wantsJson()) {
        printLine(core::toJson(answer, request).dump());
    } else {
        print(answer);
    }
    return static_cast<Exit>(core::exitStatus(answer));
}

Failure columnMissing(const QString& path, const core::PageTableError& error) {
    return {Exit::inputUnusable,
            error.problem == core::PageTableProblem::noHeader
                ? path.toStdString() + " has no first line that names its columns."
                : path.toStdString() + " has no column “" + std::string{error.column} +
                      "” in its first line."};
}

Exit catchwords(const Call& call) {
    const QString path = call.words().front();
    const std::string text = textOf(path);
    const auto answer = core::compareCatchwords(core::TextTable{text});
    if (!answer) {
        throw columnMissing(path, answer.error());
    }
    const auto json = core::toJson(*answer);
    if (call.wantsJson()) {
        printLine(json.dump());
    } else {
        for (const auto& row : json.at("rows")) {
            printLine("row " + row.at("row").dump() + "  " + row.at("verdict").get<std::string>() +
                      "  " + row.at("reason").get<std::string>());
        }
    }
    return answer->allMeet() ? Exit::done : Exit::answerIsNo;
}

void print(const core::LeafDiagnosis& diagnosis, std::string_view book) {
    if (!book.empty()) {
        printLine(std::string{book});
    }
    printLine(diagnosis.formula);
    printLine(diagnosis.extent);
    for (const core::LeafFinding& finding : diagnosis.findings) {
        printLine(finding.sentence);
    }
}

Exit leaves(const Call& call) {
    const QString path = call.words().front();
    const std::string text = textOf(path);
    const core::TextTable table{text};
    if (const auto error = core::checkPageColumns(table)) {
        throw columnMissing(path, *error);
    }
    bool isAnythingFound = false;
    for (const core::PagesOfBook& book : core::readPages(table)) {
        const auto diagnosis = core::diagnoseLeaves(book.pages);
        isAnythingFound = isAnythingFound || !diagnosis.findings.empty();
        if (call.wantsJson()) {
            printLine(core::toJson(diagnosis, book.book).dump());
        } else {
            print(diagnosis, book.book);
        }
    }
    return isAnythingFound ? Exit::answerIsNo : Exit::done;
}

} // namespace

Command collateCommand() {
    return {.name = QStringLiteral("collate"),
            .words = QStringLiteral("FORMULA [--extent STATEMENT] | --file TABLE.tsv"),
            .purpose = QStringLiteral("reads collation formulas, and lays the extent along them"),
            .fewest = 0,
            .most = -1,
            .options = {{kExtent, QStringLiteral("The pagination statement."),
                         QStringLiteral("STATEMENT")},
                        {kFormat, QStringLiteral("The format, as 8o."), QStringLiteral("FORMAT")},
                        {kFile, QStringLiteral("A table with a column “formula”."),
                         QStringLiteral("TABLE.tsv")}},
            .run = collate};
}

Command catchwordsCommand() {
    return {.name = QStringLiteral("catchwords"),
            .words = QStringLiteral("FILE.tsv"),
            .purpose = QStringLiteral("compares catchwords with the next page's first words"),
            .fewest = 1,
            .most = 1,
            .options = {},
            .run = catchwords};
}

Command leavesCommand() {
    return {.name = QStringLiteral("leaves"),
            .words = QStringLiteral("FILE.tsv"),
            .purpose = QStringLiteral("infers a book's make-up from its pages, and what is wrong"),
            .fewest = 1,
            .most = 1,
            .options = {},
            .run = leaves};
}

} // namespace headcap::app::cli
