#include "core/treatment/step_checks.h"

#include <algorithm>

#include <fmt/format.h>

namespace headcap::core {

std::vector<std::string> openChecks(const JobFile& file, const Step& step) {
    const Technique* technique = file.techniques.named(step.technique);
    if (technique == nullptr || step.struckAt) {
        return {};
    }
    auto open = technique->checks;
    std::erase_if(open, [&](const std::string& what) {
        return std::ranges::any_of(file.stepChecks, [&](const StepCheck& check) {
            return check.step == step.id && check.what == what;
        });
    });
    return open;
}

tl::expected<Change, CheckProblem> answerCheck(const JobFile& file, StepCheck check,
                                               std::optional<Id<Person>> who) {
    const Step* step = file.step(check.step);
    if (step == nullptr) {
        return tl::unexpected(CheckProblem::notAStep);
    }
    if (step->struckAt) {
        return tl::unexpected(CheckProblem::struck);
    }
    if (!check.done && check.whyNot.empty()) {
        return tl::unexpected(CheckProblem::unexplained);
    }
    check.job = step->job;
    Change change{.sentence =
                      fmt::format("{}: {}{}", check.done ? "Checked" : "Not checked", check.what,
                                  check.done ? "" : ", because " + check.whyNot),
                  .who = who};
    change.add(std::move(check));
    return change;
}

} // namespace headcap::core
