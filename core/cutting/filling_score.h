// How good a way of cutting is, the weightier things first.
#pragma once

#include <tuple>
#include <vector>

#include "core/cutting/stock_tasks.h"

namespace headcap::core {

struct FillingScore {
    int leftOut = 0;           // pieces that would fit some sheet, and have no room
    std::int64_t leftArea = 0; // their area
    int keptBack = 0;          // sheets cut that were to be kept back
    std::int64_t cost = 0;     // of the sheets cut
    double offcuts = 0;        // the sum of the squares of their areas: one large beats many small

    [[nodiscard]] bool isBetterThan(const FillingScore& other) const {
        const auto weighty = [](const FillingScore& s) {
            return std::tuple(s.leftOut, s.leftArea, s.keptBack, s.cost);
        };
        return weighty(*this) != weighty(other) ? weighty(*this) < weighty(other)
                                                : offcuts > other.offcuts;
    }
};

[[nodiscard]] FillingScore scoreOf(const CutProblem& problem, const StockTasks& tasks,
                                   const Filling& filling);

// The part of the score that one sheet's free rectangles make.
[[nodiscard]] double offcutScore(const CutProblem& problem, const SheetLayout& layout);

// How many of each type a filling holds.
[[nodiscard]] std::vector<int> placedIn(const StockTasks& tasks, const Filling& filling);

} // namespace headcap::core
