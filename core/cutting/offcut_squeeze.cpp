#include "core/cutting/offcut_squeeze.h"

#include <algorithm>
#include <optional>

#include "core/cutting/filling_score.h"
#include "core/cutting/greedy_fill.h"
#include "core/cutting/sheet_solver.h"

namespace headcap::core {

namespace {

constexpr int kSteps = 10; // of each bisection
constexpr int kGreedyTries = 200;
constexpr std::uint64_t kWorkOfFit = 8;
constexpr std::uint64_t kMostWorkAStep = 40'000'000;

std::int64_t& along(TaskRect& r, bool isAcross) {
    return isAcross ? r.width : r.height;
}

// A layout with all beyond `reach` left out: what is cut so far from the corner stays as it is.
// Nothing where a strip would become narrower than can be cut.
std::optional<SheetLayout> clipped(const SheetLayout& layout, bool isAcross, std::int64_t reach,
                                   std::int64_t leastSlack) {
    SheetLayout clip;
    clip.placed = layout.placed;
    for (TaskCut cut : layout.cuts) {
        const bool isParallel = cut.isAtX == isAcross;
        if ((isParallel ? cut.at : cut.from) < reach) {
            cut.to = isParallel ? cut.to : std::min(cut.to, reach);
            clip.cuts.push_back(cut);
        }
    }
    for (TaskRect free : layout.free) {
        std::int64_t& length = along(free, isAcross);
        length = std::min(length, reach - (isAcross ? free.x : free.y));
        if (length > 0 && length < leastSlack) {
            return std::nullopt;
        }
        if (length > 0) {
            clip.free.push_back(free);
        }
    }
    return clip;
}

class Squeeze {
public:
    // One sheet alone, and just the pieces it holds.
    Squeeze(const CutProblem& problem, const StockTasks& tasks,
            const std::vector<std::int64_t>& worth, const FilledSheet& filled, SearchBudget& budget)
        : m_problem(problem), m_budget(budget), m_task(tasks.sheets[filled.sheet].task) {
        m_task.most = placedIn(tasks, {filled});
        m_task.value = worth;
        for (std::size_t i = 0; i < worth.size(); ++i) {
            m_total += m_task.most[i] * worth[i];
        }
        m_strips.fitsSomewhere = tasks.fitsSomewhere;
        m_strips.sheets.resize(1);
    }

    // The narrowest strip found that holds them all, the rest of the sheet one free rectangle.
    [[nodiscard]] std::optional<SheetLayout> narrowest(bool isAcross) {
        const std::int64_t whole = isAcross ? m_task.width : m_task.height;
        const std::int64_t rest = std::max<std::int64_t>(
            {m_problem.rules.leastOffcut.count() + m_problem.rules.kerf.count(), m_task.leastSlack,
             1});
        std::int64_t low = leastSide(isAcross);
        std::int64_t high = whole - rest;
        std::optional<SheetLayout> best;
        for (int step = 0; step < kSteps && low < high && !m_budget.isSpent(); ++step) {
            // The first look is at the easy end: nothing there, nothing anywhere.
            const std::int64_t side = step == 0 ? high : low + (high - low) / 2;
            if (std::optional<SheetLayout> found = layoutIn(isAcross, side)) {
                best = snapped(std::move(*found), isAcross, side);
                high = m_side;
            } else if (step == 0) {
                return std::nullopt;
            } else {
                low = side + 1;
            }
        }
        return best;
    }

private:
    // All the pieces in a strip of the sheet, if a way is found.
    [[nodiscard]] std::optional<SheetLayout> layoutIn(bool isAcross, std::int64_t side) {
        SheetTask part = m_task;
        (isAcross ? part.width : part.height) = side;
        m_strips.sheets[0].task = part;
        for (int i = 0; i < kGreedyTries && !m_budget.isSpent(); ++i) {
            FillResult filled = fillGreedily(m_strips, {0}, drawOrder(m_problem, part.most, m_dice),
                                             drawRules(m_dice));
            m_budget.spend(filled.work * kWorkOfFit);
            if (filled.placed == part.most) {
                return std::move(filled.filling[0].layout);
            }
        }
        SearchBudget slice(m_budget, std::min(kMostWorkAStep, m_budget.left() / 8));
        const SheetAnswer answer = solveSheet(part, slice);
        m_budget.spend(slice.spent());
        return answer.value == m_total ? std::optional(layOut(answer.tree, part)) : std::nullopt;
    }

    // The strip no wider than its pieces reach, cut off first. Sets m_side.
    [[nodiscard]] SheetLayout snapped(SheetLayout layout, bool isAcross, std::int64_t side) {
        std::int64_t reach = 0;
        for (const TaskPlaced& placed : layout.placed) {
            const SheetOption& option = m_task.options[static_cast<std::size_t>(placed.option)];
            reach = std::max(reach, isAcross ? placed.x + option.width : placed.y + option.height);
        }
        m_side = side;
        if (std::optional<SheetLayout> clip = clipped(layout, isAcross, reach, m_task.leastSlack)) {
            layout = std::move(*clip);
            m_side = reach;
        }
        const TaskCut cut{isAcross, m_side, 0, isAcross ? m_task.height : m_task.width};
        layout.cuts.insert(layout.cuts.begin(), cut);
        layout.free.push_back(isAcross ? TaskRect{m_side, 0, m_task.width - m_side, m_task.height}
                                       : TaskRect{0, m_side, m_task.width, m_task.height - m_side});
        return layout;
    }

    [[nodiscard]] std::int64_t leastSide(bool isAcross) const {
        std::vector<double> least(m_task.most.size(), -1);
        for (const SheetOption& option : m_task.options) {
            const auto type = static_cast<std::size_t>(option.type);
            const double area =
                static_cast<double>(option.width) * static_cast<double>(option.height);
            least[type] = least[type] < 0 ? area : std::min(least[type], area);
        }
        double area = 0;
        for (std::size_t i = 0; i < least.size(); ++i) {
            area += least[i] * m_task.most[i];
        }
        const std::int64_t across = isAcross ? m_task.height : m_task.width;
        return static_cast<std::int64_t>(area / static_cast<double>(across));
    }

    const CutProblem& m_problem;
    SearchBudget& m_budget;
    SheetTask m_task;
    StockTasks m_strips;
    std::int64_t m_total = 0;
    std::int64_t m_side = 0;
    PlanDice m_dice{2};
};

} // namespace

void squeezeOffcuts(const CutProblem& problem, const StockTasks& tasks,
                    const std::vector<std::int64_t>& worth, Filling& filling,
                    SearchBudget& budget) {
    for (FilledSheet& filled : filling) {
        if (filled.layout.placed.empty() || budget.isSpent()) {
            continue;
        }
        Squeeze squeeze(problem, tasks, worth, filled, budget);
        for (const bool isAcross : {true, false}) {
            std::optional<SheetLayout> found = squeeze.narrowest(isAcross);
            if (found && offcutScore(problem, *found) > offcutScore(problem, filled.layout)) {
                filled.layout = std::move(*found);
            }
        }
    }
}

} // namespace headcap::core
