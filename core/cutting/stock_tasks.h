// The problem's sheets as tasks of the search: which pieces can come out of each sheet and how they
// may lie there, by grain, stretch, overlap, kerf and trim. A piece is cut smaller by what the
// paper grows when pasted, rounded to a tenth of a millimetre.
#pragma once

#include <vector>

#include "core/cutting/cut_plan.h"
#include "core/cutting/sheet_task.h"

namespace headcap::core {

struct StockTask {
    SheetTask task;             // in nanometres, kerf added; types are the problem's pieces
    std::vector<bool> isTurned; // by option
    Length x, y;                // where the sheet begins once its edges are trimmed
};

struct StockTasks {
    std::vector<StockTask> sheets;
    std::vector<std::int64_t> cost;  // by sheet
    std::vector<bool> fitsSomewhere; // by piece
};

[[nodiscard]] StockTasks stockTasks(const CutProblem& problem);

// The value of a piece, the cost of a sheet: as set, or the area.
[[nodiscard]] std::int64_t valueOf(const WantedPiece& piece);
[[nodiscard]] std::int64_t costOf(const StockSheet& sheet);

// Sheets cut, in any order; one entry a sheet.
struct FilledSheet {
    std::size_t sheet = 0;
    SheetLayout layout;
};
using Filling = std::vector<FilledSheet>;

} // namespace headcap::core
