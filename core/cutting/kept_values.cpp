#include "core/cutting/kept_values.h"

#include <algorithm>

namespace headcap::core {

KeptValues::KeptValues(const SheetTask& task, const CutGrid& grid)
    : m_task(task), m_grid(grid), m_packing(task.most), m_cells(grid.cells()),
      m_counts(grid.cells() * m_packing.words()) {}

void KeptValues::placePieces(const std::vector<double>& worth) {
    std::ranges::fill(m_cells, Cell{});
    std::ranges::fill(m_counts, 0);
    for (std::size_t i = 0; i < m_task.options.size(); ++i) {
        const int type = m_task.options[i].type;
        const std::size_t index = m_grid.cell(m_grid.optionX[i], m_grid.optionY[i]);
        Cell& cell = m_cells[index];
        if (worth[static_cast<std::size_t>(type)] > cell.worth) {
            cell = {worth[static_cast<std::size_t>(type)], static_cast<std::int32_t>(i),
                    From::piece};
            std::uint64_t* counts = &m_counts[index * m_packing.words()];
            std::fill_n(counts, m_packing.words(), 0);
            m_packing.addOne(counts, type);
        }
    }
}

void KeptValues::inherit(std::size_t cell, std::size_t other, From from) {
    if (m_cells[other].worth > m_cells[cell].worth) {
        m_cells[cell] = {m_cells[other].worth, 0, from};
        std::copy_n(countsAt(other), m_packing.words(), &m_counts[cell * m_packing.words()]);
    }
}

void KeptValues::consider(std::size_t cell, std::size_t a, std::size_t b, From from, int detail) {
    const double worth = m_cells[a].worth + m_cells[b].worth;
    if (worth > m_cells[cell].worth && m_packing.isWithin(countsAt(a), countsAt(b))) {
        m_cells[cell] = {worth, detail, from};
        m_packing.add(countsAt(a), countsAt(b), &m_counts[cell * m_packing.words()]);
    }
}

bool KeptValues::solve(const std::vector<double>& worth, SearchBudget& budget) {
    placePieces(worth);
    const std::uint64_t rowWork =
        3 * m_grid.work() / static_cast<std::uint64_t>(m_grid.across.size());
    for (int x = 0; x < m_grid.across.size(); ++x) {
        for (int y = 0; y < m_grid.down.size(); ++y) {
            const std::size_t cell = m_grid.cell(x, y);
            if (x > 0) {
                inherit(cell, m_grid.cell(x - 1, y), From::narrower);
            }
            if (y > 0) {
                inherit(cell, m_grid.cell(x, y - 1), From::lower);
            }
            for (int a = 1; a <= m_grid.across.half(x); ++a) {
                consider(cell, m_grid.cell(a, y), m_grid.cell(m_grid.across.rest(x, a), y),
                         From::sideBySide, a);
            }
            for (int b = 1; b <= m_grid.down.half(y); ++b) {
                consider(cell, m_grid.cell(x, b), m_grid.cell(x, m_grid.down.rest(y, b)),
                         From::above, b);
            }
        }
        if (!budget.spend(rowWork)) {
            return false;
        }
    }
    return true;
}

CutTree KeptValues::trace() const {
    CutTree tree;
    tree.root = traceFrom(m_grid.across.size() - 1, m_grid.down.size() - 1, tree);
    return tree;
}

int KeptValues::traceFrom(int x, int y, CutTree& tree) const {
    const Cell& cell = m_cells[m_grid.cell(x, y)];
    switch (cell.from) {
    case From::nothing:
        return -1;
    case From::narrower:
        return traceFrom(x - 1, y, tree);
    case From::lower:
        return traceFrom(x, y - 1, tree);
    case From::piece:
        return tree.addPiece(cell.detail);
    case From::sideBySide: {
        const int first = traceFrom(cell.detail, y, tree);
        return tree.addJoin(true, first, traceFrom(m_grid.across.rest(x, cell.detail), y, tree));
    }
    case From::above: {
        const int first = traceFrom(x, cell.detail, tree);
        return tree.addJoin(false, first, traceFrom(x, m_grid.down.rest(y, cell.detail), tree));
    }
    }
    return -1;
}

} // namespace headcap::core
