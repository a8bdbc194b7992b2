// All the pieces out of the cheapest sheets, with large offcuts left: the workshop's question.
#pragma once

#include "core/cutting/filling_score.h"
#include "core/cutting/search_limits.h"
#include "core/cutting/stock_tasks.h"

namespace headcap::core {

struct AllPiecesAnswer {
    Filling filling;
    FillingScore score;
    bool isProvedBest = false; // fewest left out at the least cost
};

[[nodiscard]] AllPiecesAnswer cutAllPieces(const CutProblem& problem, const StockTasks& tasks,
                                           SearchBudget& budget);

} // namespace headcap::core
