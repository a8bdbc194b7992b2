// Prices on the use of each type of piece that bring the bound on a sheet down (a Lagrangian
// relaxation of the numbers wanted, by subgradient steps), and the best way of cutting met on the
// way. Prices are multiples of a power of two, so that every sum of values and prices is exact.
#pragma once

#include <vector>

#include "core/cutting/kept_values.h"
#include "core/cutting/relaxed_values.h"
#include "core/cutting/search_limits.h"

namespace headcap::core {

struct PriceAnswer {
    CutTree tree; // the best allowed so far
    std::int64_t value = 0;
    std::int64_t bound = 0;    // nothing is worth more
    std::vector<double> price; // that gave the bound
};

[[nodiscard]] PriceAnswer descendPrices(const SheetTask& task, const CutGrid& grid,
                                        SearchBudget& budget);

} // namespace headcap::core
