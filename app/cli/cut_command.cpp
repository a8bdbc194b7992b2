#include "app/cli/commands.h"
#include "app/cli/text_file.h"
#include "core/cutting/plan_json.h"

namespace headcap::app::cli {
namespace {

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
    return place + " can't be cut: a size or a count there is nothing, negative or too large.";
}

Exit run(const Call& call) {
    const auto answer = core::answerPlanFile(textOf(call.words().front()));
    if (!answer) {
        throw Failure{Exit::inputUnusable,
                      call.words().front().toStdString() + ": " + whyNot(answer.error())};
    }
    printLine(core::cutPlanJson(answer->problem, answer->plan));
    return answer->plan.leftOut.empty() ? Exit::done : Exit::answerIsNo;
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
