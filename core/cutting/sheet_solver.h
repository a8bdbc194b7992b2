// The most value out of one sheet: the classic constrained two-dimensional guillotine cutting
// problem. The unconstrained optimum where it happens to be allowed, then prices, then the exact
// search, as far as the budget goes.
#pragma once

#include "core/cutting/search_limits.h"
#include "core/cutting/sheet_task.h"

namespace headcap::core {

struct SheetAnswer {
    CutTree tree;
    std::int64_t value = 0;
    std::int64_t bound = 0; // nothing is worth more; proved best where it equals the value
};

[[nodiscard]] SheetAnswer solveSheet(const SheetTask& task, SearchBudget& budget);

} // namespace headcap::core
