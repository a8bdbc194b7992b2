// The most value out of the sheets: with one sheet the classic constrained guillotine problem.
#pragma once

#include "core/cutting/search_limits.h"
#include "core/cutting/stock_tasks.h"

namespace headcap::core {

struct MostValueAnswer {
    Filling filling;
    std::int64_t value = 0;
    bool isProvedBest = false;
};

[[nodiscard]] MostValueAnswer cutMostValue(const CutProblem& problem, const StockTasks& tasks,
                                           SearchBudget& budget);

} // namespace headcap::core
