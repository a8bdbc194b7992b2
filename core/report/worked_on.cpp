#include "core/report/worked_on.h"

#include <algorithm>

#include "core/treatment/technique_facts.h"

namespace headcap::core::report {

bool isWorkedOn(const JobFile& file, const Finding& finding) {
    return std::ranges::any_of(file.steps, [&](const Step& step) {
        const auto& answers = factsOf(step.technique).answers;
        return !step.struckAt && std::ranges::find(answers, finding.component) != answers.end();
    });
}

} // namespace headcap::core::report
