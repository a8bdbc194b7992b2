#include "core/cutting/relaxed_values.h"

#include <algorithm>

namespace headcap::core {

CutGrid::CutGrid(const SheetTask& task, CutPoints x, CutPoints y)
    : across(std::move(x)), down(std::move(y)) {
    for (const SheetOption& option : task.options) {
        optionX.push_back(across.below(option.width));
        optionY.push_back(down.below(option.height));
    }
}

std::uint64_t CutGrid::work() const {
    std::uint64_t sides = 0;
    for (int i = 0; i < across.size(); ++i) {
        sides +=
            static_cast<std::uint64_t>(across.half(i)) * static_cast<std::uint64_t>(down.size());
    }
    for (int i = 0; i < down.size(); ++i) {
        sides +=
            static_cast<std::uint64_t>(down.half(i)) * static_cast<std::uint64_t>(across.size());
    }
    return sides + cells();
}

RelaxedValues::RelaxedValues(const SheetTask& task, const CutGrid& grid)
    : m_task(task), m_grid(grid), m_best(grid.cells()) {}

void RelaxedValues::place() {
    std::ranges::fill(m_best, 0.0);
    for (std::size_t i = 0; i < m_task.options.size(); ++i) {
        double& best = m_best[m_grid.cell(m_grid.optionX[i], m_grid.optionY[i])];
        best = std::max(best, m_worth[static_cast<std::size_t>(m_task.options[i].type)]);
    }
}

bool RelaxedValues::solve(const std::vector<double>& worth, SearchBudget& budget) {
    m_worth = worth;
    place();
    const int height = m_grid.down.size();
    const std::uint64_t rowWork = m_grid.work() / static_cast<std::uint64_t>(m_grid.across.size());
    for (int x = 0; x < m_grid.across.size(); ++x) {
        double* row = &m_best[m_grid.cell(x, 0)];
        if (x > 0) {
            const double* before = &m_best[m_grid.cell(x - 1, 0)];
            for (int y = 0; y < height; ++y) {
                row[y] = std::max(row[y], before[y]);
            }
        }
        for (int a = 1; a <= m_grid.across.half(x); ++a) {
            const double* left = &m_best[m_grid.cell(a, 0)];
            const double* right = &m_best[m_grid.cell(m_grid.across.rest(x, a), 0)];
            for (int y = 0; y < height; ++y) {
                const double sum = left[y] + right[y];
                row[y] = row[y] < sum ? sum : row[y];
            }
        }
        for (int y = 1; y < height; ++y) {
            double best = std::max(row[y], row[y - 1]);
            for (int b = 1; b <= m_grid.down.half(y); ++b) {
                const double sum = row[b] + row[m_grid.down.rest(y, b)];
                best = best < sum ? sum : best;
            }
            row[y] = best;
        }
        if (!budget.spend(rowWork)) {
            return false;
        }
    }
    return true;
}

CutTree RelaxedValues::trace() const {
    CutTree tree;
    tree.root = traceFrom(m_grid.across.size() - 1, m_grid.down.size() - 1, tree);
    return tree;
}

int RelaxedValues::traceFrom(int x, int y, CutTree& tree) const {
    const double value = at(x, y);
    if (value <= 0) {
        return -1;
    }
    while (x > 0 && at(x - 1, y) == value) {
        --x;
    }
    while (y > 0 && at(x, y - 1) == value) {
        --y;
    }
    for (std::size_t i = 0; i < m_task.options.size(); ++i) {
        if (m_grid.optionX[i] == x && m_grid.optionY[i] == y &&
            m_worth[static_cast<std::size_t>(m_task.options[i].type)] == value) {
            return tree.addPiece(static_cast<int>(i));
        }
    }
    const auto join = [&](bool sideBySide, int first, int second) {
        return first < 0 ? second : second < 0 ? first : tree.addJoin(sideBySide, first, second);
    };
    for (int a = 1; a <= m_grid.across.half(x); ++a) {
        const int rest = m_grid.across.rest(x, a);
        if (at(a, y) + at(rest, y) == value) {
            const int first = traceFrom(a, y, tree);
            return join(true, first, traceFrom(rest, y, tree));
        }
    }
    for (int b = 1; b <= m_grid.down.half(y); ++b) {
        const int rest = m_grid.down.rest(y, b);
        if (at(x, b) + at(x, rest) == value) {
            const int first = traceFrom(x, b, tree);
            return join(false, first, traceFrom(x, rest, tree));
        }
    }
    return -1;
}

std::vector<double> RelaxedValues::beside(SearchBudget& budget) const {
    const int width = m_grid.across.size();
    const int height = m_grid.down.size();
    const std::int64_t fullX = m_grid.across.full();
    const std::int64_t fullY = m_grid.down.full();
    std::vector<double> best(m_grid.cells());
    for (int x = width - 1; x >= 0; --x) {
        for (int y = height - 1; y >= 0; --y) {
            // Alone at its width or height, a part leaves all that is beyond it.
            double here = std::max(at(m_grid.across.below(fullX - m_grid.across.at(x)), y),
                                   at(x, m_grid.down.below(fullY - m_grid.down.at(y))));
            here = x + 1 < width ? std::max(here, best[m_grid.cell(x + 1, y)]) : here;
            here = y + 1 < height ? std::max(here, best[m_grid.cell(x, y + 1)]) : here;
            for (int a = 1; a < width && m_grid.across.at(a) + m_grid.across.at(x) <= fullX; ++a) {
                const int sum = m_grid.across.sum(x, a);
                if (sum >= 0) {
                    here = std::max(here, best[m_grid.cell(sum, y)] + at(a, y));
                }
            }
            for (int b = 1; b < height && m_grid.down.at(b) + m_grid.down.at(y) <= fullY; ++b) {
                const int sum = m_grid.down.sum(y, b);
                if (sum >= 0) {
                    here = std::max(here, best[m_grid.cell(x, sum)] + at(x, b));
                }
            }
            best[m_grid.cell(x, y)] = here;
        }
        budget.spend(static_cast<std::uint64_t>(height) *
                     static_cast<std::uint64_t>(width + height));
    }
    return best;
}

} // namespace headcap::core
