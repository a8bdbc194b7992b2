// From sheets taken apart by the search to the plan a person cuts by.
#pragma once

#include "core/cutting/cut_plan.h"
#include "core/cutting/stock_tasks.h"

namespace headcap::core {

[[nodiscard]] CutPlan writePlan(const CutProblem& problem, const StockTasks& tasks,
                                const Filling& filling, bool isProvedBest);

} // namespace headcap::core
