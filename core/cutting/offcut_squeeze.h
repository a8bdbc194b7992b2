// Gathers what is left of each sheet into one offcut: its pieces are cut out of as narrow, or as
// low, a part of it as they fit into.
#pragma once

#include <vector>

#include "core/cutting/search_limits.h"
#include "core/cutting/stock_tasks.h"

namespace headcap::core {

// Changes the layouts of sheets whose offcuts become better; `worth` is the area by type.
void squeezeOffcuts(const CutProblem& problem, const StockTasks& tasks,
                    const std::vector<std::int64_t>& worth, Filling& filling, SearchBudget& budget);

} // namespace headcap::core
