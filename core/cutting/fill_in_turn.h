// Sheets filled one after another, each with the most that the search gets out of it from what is
// left to cut.
#pragma once

#include <vector>

#include "core/cutting/search_limits.h"
#include "core/cutting/stock_tasks.h"

namespace headcap::core {

struct TurnResult {
    Filling filling;
    std::vector<int> left; // by type
    std::int64_t value = 0;
    // What one sheet alone could give at most; the value where that is proved.
    std::int64_t boundOfFirst = 0;
};

// `worth` is by type; `wanted` how many of each.
[[nodiscard]] TurnResult fillInTurn(const StockTasks& tasks, const std::vector<std::size_t>& sheets,
                                    const std::vector<int>& wanted,
                                    const std::vector<std::int64_t>& worth, SearchBudget& budget);

} // namespace headcap::core
