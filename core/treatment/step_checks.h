// The checks that belong to a technique, as they were answered in a step: made, or not made and
// why. An answer is never taken back; a corrected step keeps those of the one it corrects.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "core/record/change.h"
#include "core/record/job_file.h"

namespace headcap::core {

enum class CheckProblem {
    unexplained, // not made, and not a word why
    notAStep,    // of this job's log
    struck,
};

// The checks of its technique that nobody has answered yet, as the vocabulary says them.
[[nodiscard]] std::vector<std::string> openChecks(const JobFile& file, const Step& step);

[[nodiscard]] tl::expected<Change, CheckProblem> answerCheck(const JobFile& file, StepCheck check,
                                                             std::optional<Id<Person>> who);

} // namespace headcap::core
