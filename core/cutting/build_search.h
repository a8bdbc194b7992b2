// The exact search: parts are joined side by side and one above the other, the most promising
// first, until none can lead to a better sheet (best-first with a closed list: Viswanathan & Bagchi
// 1993, Hifi 1997, Cung, Hifi & Le Cun 2000). What a part can lead to is bounded by its own value
// and what the rest of the sheet is worth beside it, with prices and without.
#pragma once

#include <vector>

#include "core/cutting/relaxed_values.h"
#include "core/cutting/search_limits.h"
#include "core/cutting/sheet_task.h"

namespace headcap::core {

struct BuildAnswer {
    CutTree tree;           // empty where nothing better than `known` was found
    std::int64_t value = 0; // of the tree, or `known`
    std::int64_t bound = 0; // nothing is worth more
};

[[nodiscard]] BuildAnswer searchBuilds(const SheetTask& task, const CutGrid& grid,
                                       const std::vector<double>& price, std::int64_t known,
                                       SearchBudget& budget);

} // namespace headcap::core
