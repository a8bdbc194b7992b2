// Sheets that are hard to cut, and the most that can be got out of them: sheets taken apart without
// waste, so that their whole area is the optimum, among pieces that only mislead; and constrained
// ones drawn as the literature draws them, below the unconstrained optimum of the same sheet.
#pragma once

#include <string>
#include <vector>

#include "core/cutting/cut_plan.h"

namespace headcap::core::bench {

struct HardSheet {
    std::string name;
    CutProblem problem;
    std::int64_t bound = 0; // nothing is worth more, in whole units of value
    bool isOptimum = false; // the bound is reached by construction
};

[[nodiscard]] std::vector<HardSheet> hardSheets();

} // namespace headcap::core::bench
