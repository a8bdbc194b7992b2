#include "core/cutting/offcut_squeeze.h"

#include <algorithm>
#include <optional>

#include "core/cutting/filling_score.h"
#include "core/cutting/sheet_solver.h"

namespace headcap::core {

namespace {

constexpr int kSteps = 9; // of each bisection
constexpr std::uint64_t kMostWorkAStep = 15'000'000;

struct Squeeze {
    const CutProblem& problem;
    SheetTask task; // holds just the sheet's own pieces
    std::int64_t total = 0;
    SearchBudget& budget;

    [[nodiscard]] SheetTask strip(bool isAcross, std::int64_t side) const {
        SheetTask part = task;
        (isAcross ? part.width : part.height) = side;
        return part;
    }

    // A way to cut all the pieces out of a strip of the sheet, if one is found.
    [[nodiscard]] std::optional<CutTree> treeIn(const SheetTask& part) {
        SearchBudget slice(budget, std::min(kMostWorkAStep, budget.left() / 8));
        SheetAnswer answer = solveSheet(part, slice);
        budget.spend(slice.spent());
        return answer.value == total ? std::optional(std::move(answer.tree)) : std::nullopt;
    }

    // The strip cut off first, and the rest of the sheet one free rectangle.
    [[nodiscard]] SheetLayout layOutStrip(const CutTree& tree, bool isAcross,
                                          std::int64_t side) const {
        SheetLayout layout = layOut(tree, strip(isAcross, side));
        const TaskCut cut{isAcross, side, 0, isAcross ? task.height : task.width};
        layout.cuts.insert(layout.cuts.begin(), cut);
        layout.free.push_back(isAcross ? TaskRect{side, 0, task.width - side, task.height}
                                       : TaskRect{0, side, task.width, task.height - side});
        return layout;
    }

    [[nodiscard]] std::int64_t leastSide(bool isAcross) const {
        double area = 0;
        std::vector<bool> isSeen(task.most.size());
        for (const SheetOption& option : task.options) {
            const auto type = static_cast<std::size_t>(option.type);
            if (!isSeen[type]) {
                area += static_cast<double>(task.most[type]) * static_cast<double>(option.width) *
                        static_cast<double>(option.height);
                isSeen[type] = true;
            }
        }
        return static_cast<std::int64_t>(area /
                                         static_cast<double>(isAcross ? task.height : task.width));
    }

    // The narrowest strip found that holds them all.
    [[nodiscard]] std::optional<SheetLayout> narrowest(bool isAcross) {
        const std::int64_t whole = isAcross ? task.width : task.height;
        const std::int64_t rest = std::max<std::int64_t>(
            {problem.rules.leastOffcut.count() + problem.rules.kerf.count(), task.leastSlack, 1});
        std::int64_t low = leastSide(isAcross);
        std::int64_t high = whole - rest;
        std::optional<SheetLayout> best;
        for (int step = 0; step < kSteps && low < high && !budget.isSpent(); ++step) {
            const std::int64_t middle = low + (high - low) / 2;
            const SheetTask part = strip(isAcross, middle);
            if (const std::optional<CutTree> tree = treeIn(part)) {
                const std::int64_t reach = reachOf(layOut(*tree, part), isAcross);
                high = isAllowed(*tree, strip(isAcross, reach)) ? reach : middle;
                best = layOutStrip(*tree, isAcross, high);
            } else {
                low = middle + 1;
            }
        }
        return best;
    }

    // How far the pieces of a layout really reach.
    [[nodiscard]] std::int64_t reachOf(const SheetLayout& layout, bool isAcross) const {
        std::int64_t reach = 0;
        for (const TaskPlaced& placed : layout.placed) {
            const SheetOption& option = task.options[static_cast<std::size_t>(placed.option)];
            reach = std::max(reach, isAcross ? placed.x + option.width : placed.y + option.height);
        }
        return reach;
    }
};

} // namespace

void squeezeOffcuts(const CutProblem& problem, const StockTasks& tasks,
                    const std::vector<std::int64_t>& worth, Filling& filling,
                    SearchBudget& budget) {
    for (FilledSheet& filled : filling) {
        if (filled.layout.placed.empty() || budget.isSpent()) {
            continue;
        }
        Squeeze squeeze{problem, tasks.sheets[filled.sheet].task, 0, budget};
        squeeze.task.most = placedIn(tasks, {filled});
        squeeze.task.value = worth;
        for (std::size_t i = 0; i < worth.size(); ++i) {
            squeeze.total += squeeze.task.most[i] * worth[i];
        }
        for (const bool isAcross : {true, false}) {
            std::optional<SheetLayout> found = squeeze.narrowest(isAcross);
            if (found && offcutScore(problem, *found) > offcutScore(problem, filled.layout)) {
                filled.layout = std::move(*found);
            }
        }
    }
}

} // namespace headcap::core
