#include "core/cutting/sheet_solver.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>

#include "core/cutting/build_search.h"
#include "core/cutting/price_descent.h"

namespace headcap::core {

namespace {

constexpr double kMostPoints = 3000;
constexpr double kMostCoarseTicks = 600;
constexpr std::uint64_t kPassesOfSearch = 24; // over the grid, for prices to do any good
constexpr std::uint64_t kMostBuildCells = 4'000'000;

bool canBeCut(const SheetOption& option, const SheetTask& task) {
    const auto type = static_cast<std::size_t>(option.type);
    return option.width <= task.width && option.height <= task.height && task.most[type] > 0 &&
           task.value[type] > 0;
}

// The task without what can't be cut from the sheet, and no more of a type than its area allows.
SheetTask narrowed(const SheetTask& task) {
    SheetTask narrow = task;
    std::erase_if(narrow.options,
                  [&](const SheetOption& option) { return !canBeCut(option, task); });
    for (const SheetOption& option : narrow.options) {
        int& most = narrow.most[static_cast<std::size_t>(option.type)];
        const double room = static_cast<double>(task.width) / static_cast<double>(option.width) *
                            static_cast<double>(task.height) / static_cast<double>(option.height);
        most = static_cast<int>(std::min(static_cast<double>(most), room + 1e-6));
    }
    return narrow;
}

// Names a narrowed task's options in a tree as the whole task does.
void nameOptionsAsIn(const SheetTask& whole, CutTree& tree) {
    std::vector<int> names;
    for (std::size_t i = 0; i < whole.options.size(); ++i) {
        if (canBeCut(whole.options[i], whole)) {
            names.push_back(static_cast<int>(i));
        }
    }
    for (CutTree::Node& node : tree.nodes) {
        if (node.option >= 0) {
            node.option = names[static_cast<std::size_t>(node.option)];
        }
    }
}

std::int64_t commonMeasure(const SheetTask& task) {
    std::int64_t measure = 0;
    for (const SheetOption& option : task.options) {
        measure = std::gcd(measure, task.value[static_cast<std::size_t>(option.type)]);
    }
    return std::max<std::int64_t>(measure, 1);
}

// What the area of the sheet allows, whatever the shapes: the dearest by area first.
std::int64_t areaBound(const SheetTask& task) {
    std::vector<double> area(task.most.size(), -1);
    for (const SheetOption& option : task.options) {
        area[static_cast<std::size_t>(option.type)] =
            static_cast<double>(option.width) * static_cast<double>(option.height);
    }
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < area.size(); ++i) {
        if (area[i] > 0) {
            order.push_back(i);
        }
    }
    std::ranges::sort(order, [&](std::size_t a, std::size_t b) {
        return static_cast<double>(task.value[a]) / area[a] >
               static_cast<double>(task.value[b]) / area[b];
    });
    double room = static_cast<double>(task.width) * static_cast<double>(task.height);
    double value = 0;
    for (const std::size_t type : order) {
        const double taken = std::min(static_cast<double>(task.most[type]), room / area[type]);
        value += taken * static_cast<double>(task.value[type]);
        room -= taken * area[type];
    }
    return static_cast<std::int64_t>(value * (1 + 1e-12)) + 1;
}

// How many points a side may have for its grid to be gone over so many times: a pass takes about
// half the third power.
double pointsWithin(const SearchBudget& budget, std::uint64_t passes) {
    const std::uint64_t each = budget.left() / passes;
    return std::max(std::cbrt(2.0 * static_cast<double>(each)), 32.0);
}

// The same sheet on a coarser measure, every piece rounded up: what is allowed there is allowed.
SheetTask coarsened(const SheetTask& task, const SearchBudget& budget) {
    SheetTask coarse = task;
    const double ticks = std::min(pointsWithin(budget, kPassesOfSearch), kMostCoarseTicks);
    const std::int64_t tick = std::max<std::int64_t>(1, std::max(task.width, task.height) /
                                                            static_cast<std::int64_t>(ticks));
    const auto up = [&](std::int64_t length, std::int64_t full) {
        return std::min((length + tick - 1) / tick * tick, full);
    };
    for (SheetOption& option : coarse.options) {
        option.width = up(option.width, task.width);
        option.height = up(option.height, task.height);
    }
    return coarse;
}

SheetAnswer solveOnGrid(const SheetTask& task, const CutGrid& grid, SearchBudget& budget) {
    PriceAnswer priced = descendPrices(task, grid, budget);
    SheetAnswer answer{std::move(priced.tree), priced.value, priced.bound};
    if (answer.value < answer.bound && grid.cells() <= kMostBuildCells && !budget.isSpent()) {
        BuildAnswer built = searchBuilds(task, grid, priced.price, answer.value, budget);
        if (built.value > answer.value) {
            answer.value = built.value;
            answer.tree = std::move(built.tree);
        }
        // With a least strip the search leaves some ways out, and proves nothing.
        if (task.leastSlack == 0) {
            answer.bound = std::min(answer.bound, built.bound);
        }
    }
    return answer;
}

std::optional<CutGrid> gridOf(const SheetTask& task, const SearchBudget& budget) {
    const auto most =
        static_cast<std::size_t>(std::min(1.2 * pointsWithin(budget, 1), kMostPoints));
    std::optional<CutPoints> across = CutPoints::of(task, CutPoints::Side::width, most);
    if (!across) {
        return std::nullopt;
    }
    std::optional<CutPoints> down = CutPoints::of(task, CutPoints::Side::height, most);
    if (!down) {
        return std::nullopt;
    }
    return CutGrid(task, std::move(*across), std::move(*down));
}

// A good way of cutting where the whole grid is too large to be gone over often.
SheetAnswer solveCoarsely(const SheetTask& task, SearchBudget& budget) {
    const SheetTask coarse = coarsened(task, budget);
    const std::optional<CutGrid> grid = gridOf(coarse, budget);
    if (!grid) {
        return {};
    }
    SheetAnswer answer = solveOnGrid(coarse, *grid, budget);
    return isAllowed(answer.tree, task) ? answer : SheetAnswer{};
}

// The unconstrained optimum, where it is allowed; else its bound alone.
SheetAnswer solveUnconstrained(const SheetTask& task, const CutGrid& grid, SearchBudget& budget) {
    SheetAnswer answer;
    RelaxedValues relaxed(task, grid);
    answer.bound = std::numeric_limits<std::int64_t>::max();
    if (relaxed.solve({task.value.begin(), task.value.end()}, budget)) {
        answer.bound = static_cast<std::int64_t>(relaxed.whole());
        CutTree tree = relaxed.trace();
        if (isAllowed(tree, task)) {
            answer.value = valueOf(countsOf(tree, task), task);
            answer.tree = std::move(tree);
        }
    }
    return answer;
}

// A rough answer first, to have one; then one pass over the whole grid for the bound; what is left
// of the budget goes on a finer measure.
SheetAnswer solveLarge(const SheetTask& task, const std::optional<CutGrid>& grid,
                       SearchBudget& budget) {
    SearchBudget part(budget, budget.left() / 8);
    SheetAnswer best = solveCoarsely(task, part);
    budget.spend(part.spent());
    std::int64_t bound = std::numeric_limits<std::int64_t>::max();
    const auto offer = [&](SheetAnswer answer) {
        if (answer.value > best.value) {
            best = std::move(answer);
        }
    };
    if (grid && grid->work() < budget.left() / 5 * 4) {
        SheetAnswer exact = solveUnconstrained(task, *grid, budget);
        bound = exact.bound;
        offer(std::move(exact));
    }
    if (best.value < bound) {
        offer(solveCoarsely(task, budget));
    }
    best.bound = bound;
    return best;
}

} // namespace

SheetAnswer solveSheet(const SheetTask& whole, SearchBudget& budget) {
    SheetTask task = narrowed(whole);
    if (task.options.empty()) {
        return {};
    }
    const std::int64_t measure = commonMeasure(task);
    for (std::int64_t& value : task.value) {
        value /= measure;
    }
    const std::optional<CutGrid> grid = gridOf(task, budget);
    const bool isLarge = !grid || grid->work() > budget.left() / kPassesOfSearch;
    SheetAnswer answer =
        isLarge ? solveLarge(task, grid, budget) : solveOnGrid(task, *grid, budget);
    answer.bound = std::min(answer.bound, areaBound(task));
    answer.bound = std::max(answer.bound, answer.value) * measure;
    answer.value *= measure;
    nameOptionsAsIn(whole, answer.tree);
    return answer;
}

} // namespace headcap::core
