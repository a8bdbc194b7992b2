#include "core/cutting/build_bounds.h"

namespace headcap::core {

BuildBounds::BuildBounds(const SheetTask& task, const CutGrid& grid,
                         const std::vector<double>& price)
    : m_task(task), m_grid(grid), m_worth(task.value.begin(), task.value.end()) {
    for (std::size_t i = 0; i < price.size(); ++i) {
        m_worth[i] -= price[i];
        m_allowance += price[i] * static_cast<double>(task.most[i]);
    }
}

bool BuildBounds::prepare(SearchBudget& budget) {
    RelaxedValues relaxed(m_task, m_grid);
    if (!relaxed.solve({m_task.value.begin(), m_task.value.end()}, budget)) {
        return false;
    }
    m_beside = relaxed.beside(budget);
    if (!relaxed.solve(m_worth, budget)) {
        return false;
    }
    m_pricedBeside = relaxed.beside(budget);
    return true;
}

} // namespace headcap::core
