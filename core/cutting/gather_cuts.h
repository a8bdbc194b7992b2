// The same pieces out of a sheet by fewer cuts: what lies side by side and is as high is trimmed in
// one, before it is cut apart, and what falls off stays in one piece. As a binder would.
#pragma once

#include "core/cutting/cut_plan.h"
#include "core/cutting/stock_tasks.h"

namespace headcap::core {

// Each sheet is laid out anew where that keeps offcuts as good and takes fewer cuts.
void gatherCuts(const CutProblem& problem, const StockTasks& tasks, Filling& filling);

} // namespace headcap::core
