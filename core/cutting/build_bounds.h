// What a build, a rectangle joined of pieces, can come to on its sheet at most: with the best that
// can lie beside it, whatever number of each piece is wanted, and the same at prices, which makes
// pieces that are few dear. The lesser of the two bounds.
#pragma once

#include <algorithm>
#include <cstddef>
#include <vector>

#include "core/cutting/relaxed_values.h"
#include "core/cutting/search_limits.h"
#include "core/cutting/sheet_task.h"

namespace headcap::core {

class BuildBounds {
public:
    BuildBounds(const SheetTask& task, const CutGrid& grid, const std::vector<double>& price);

    // False: the budget was spent first.
    [[nodiscard]] bool prepare(SearchBudget& budget);

    // The value of one piece less its price.
    [[nodiscard]] double worthOf(int type) const { return m_worth[static_cast<std::size_t>(type)]; }
    [[nodiscard]] double boundOf(double value, double worth, std::size_t cell) const {
        return std::min(value + m_beside[cell], m_allowance + worth + m_pricedBeside[cell]);
    }

private:
    const SheetTask& m_task;
    const CutGrid& m_grid;
    std::vector<double> m_worth, m_beside, m_pricedBeside;
    double m_allowance = 0; // the prices of all that is wanted
};

} // namespace headcap::core
