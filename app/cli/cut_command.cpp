#include "app/cli/commands.h"
#include "app/cli/text_file.h"
#include "core/cutting/plan_json.h"

namespace headcap::app::cli {
namespace {

std::string whyNoPlan(core::CutProblemFault fault) {
    using F = core::CutProblemFault;
    switch (fault) {
    case F::noSheets:
    case F::noPieces:
        return " has nothing in it.";
    case F::tooManyRows:
        return " has more than " + std::to_string(core::kMostCutRows) + " rows.";
    case F::tooManySheets:
        return " comes to more than " + std::to_string(core::kMostSheetsToCut) + " sheets.";
    case F::tooManyPieces:
        return " comes to more pieces than are planned at once: " +
               std::to_string(core::kMostPiecesToPlace) + " that all must find a place, or " +
               std::to_string(core::kMostPiecesToChoose) + " to choose from.";
    case F::notPositive:
        return " must be above nothing.";
    case F::tooLarge:
        return " is larger than anything that is cut at a bench.";
    case F::negative:
        return " must not be below nothing.";
    case F::trimmedAway:
        return " leaves nothing of the sheet.";
    }
    return " can't be cut.";
}

std::string whyNot(const core::PlanFileError& error) {
    const std::string place = error.place.empty() ? std::string{"the plan"} : error.place;
    switch (error.fault) {
    case core::PlanFileFault::tooLong:
        return "the plan is longer than a plan can be.";
    case core::PlanFileFault::notJson:
        return "the plan is not JSON from byte " + std::to_string(error.at) + " on.";
    case core::PlanFileFault::wrongType:
        return place +
               " is of the wrong kind: a measure is a number of millimetres, a name is text.";
    case core::PlanFileFault::missing:
        return place + " is missing.";
    case core::PlanFileFault::unknownField:
        return place + " is not a field of a plan.";
    case core::PlanFileFault::unknownWord:
        return place + " has a word that is not known there.";
    case core::PlanFileFault::notWhole:
        return place + " must be a whole number.";
    case core::PlanFileFault::doubleId:
        return place + " names an id for the second time.";
    case core::PlanFileFault::problem:
        break;
    }
    return place + (error.problem ? whyNoPlan(*error.problem) : " can't be cut.");
}

Exit run(const Call& call) {
    const auto answer = core::answerPlanFile(textOf(call.words().front()));
    if (!answer) {
        throw Failure{Exit::inputUnusable,
                      call.words().front().toStdString() + ": " + whyNot(answer.error())};
    }
    printLine(core::cutPlanJson(answer->problem, answer->plan));
    // Where the most value is sought, counts say the most that is wanted: none is missed.
    const bool isAnswered =
        answer->plan.leftOut.empty() || answer->problem.objective == core::CutObjective::mostValue;
    return isAnswered ? Exit::done : Exit::answerIsNo;
}

} // namespace

Command cutCommand() {
    return {.name = QStringLiteral("cut"),
            .words = QStringLiteral("PLAN.json"),
            .purpose = QStringLiteral("plans the cutting of sheets; answers in JSON"),
            .fewest = 1,
            .most = 1,
            .options = {},
            .run = run};
}

} // namespace headcap::app::cli
