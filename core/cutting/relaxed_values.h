// What every rectangle of a sheet is worth at most, if each type of piece had a price for its use
// and no limit on its number; and what the rest of the sheet is worth beside it. With prices of
// nothing it is the unconstrained problem (Gilmore & Gomory 1966, Beasley 1985), solved exactly;
// with others a Lagrangian bound of the constrained one.
#pragma once

#include <vector>

#include "core/cutting/cut_points.h"
#include "core/cutting/search_limits.h"
#include "core/cutting/sheet_task.h"

namespace headcap::core {

// The points of both sides, and each option's place among them.
struct CutGrid {
    CutPoints across, down;
    std::vector<int> optionX, optionY; // the point of each option's width, height

    CutGrid(const SheetTask& task, CutPoints x, CutPoints y);
    [[nodiscard]] std::size_t cells() const {
        return static_cast<std::size_t>(across.size()) * static_cast<std::size_t>(down.size());
    }
    [[nodiscard]] std::size_t cell(int x, int y) const {
        return static_cast<std::size_t>(x) * static_cast<std::size_t>(down.size()) +
               static_cast<std::size_t>(y);
    }
    // How many combinations one pass over the grid looks at.
    [[nodiscard]] std::uint64_t work() const;
};

class RelaxedValues {
public:
    // `worth` is by type: value less price. False from solve: the budget ran out, values unusable.
    RelaxedValues(const SheetTask& task, const CutGrid& grid);
    [[nodiscard]] bool solve(const std::vector<double>& worth, SearchBudget& budget);

    [[nodiscard]] double at(int x, int y) const { return m_best[m_grid.cell(x, y)]; }
    [[nodiscard]] double whole() const { return m_best.back(); }
    // One way to cut the whole sheet worth that much.
    [[nodiscard]] CutTree trace() const;
    // What the rest of the sheet is worth beside a part of each size.
    [[nodiscard]] std::vector<double> beside(SearchBudget& budget) const;

private:
    void place();
    int traceFrom(int x, int y, CutTree& tree) const;

    const SheetTask& m_task;
    const CutGrid& m_grid;
    std::vector<double> m_worth;
    std::vector<double> m_best;
};

} // namespace headcap::core
