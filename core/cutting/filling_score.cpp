#include "core/cutting/filling_score.h"

#include <algorithm>

namespace headcap::core {

double offcutScore(const CutProblem& problem, const SheetLayout& layout) {
    const std::int64_t kerf = problem.rules.kerf.count();
    const std::int64_t least = std::max<std::int64_t>(problem.rules.leastOffcut.count(), 1);
    double score = 0;
    for (const TaskRect& free : layout.free) {
        if (free.width - kerf >= least && free.height - kerf >= least) {
            const double area = static_cast<double>(free.width - kerf) / 1e6 *
                                static_cast<double>(free.height - kerf) / 1e6;
            score += area * area;
        }
    }
    return score;
}

std::vector<int> placedIn(const StockTasks& tasks, const Filling& filling) {
    std::vector<int> placed(tasks.fitsSomewhere.size());
    for (const FilledSheet& filled : filling) {
        const std::vector<SheetOption>& options = tasks.sheets[filled.sheet].task.options;
        for (const TaskPlaced& piece : filled.layout.placed) {
            ++placed[static_cast<std::size_t>(
                options[static_cast<std::size_t>(piece.option)].type)];
        }
    }
    return placed;
}

FillingScore scoreOf(const CutProblem& problem, const StockTasks& tasks, const Filling& filling) {
    FillingScore score;
    const std::vector<int> placed = placedIn(tasks, filling);
    for (std::size_t i = 0; i < placed.size(); ++i) {
        const WantedPiece& piece = problem.pieces[i];
        if (tasks.fitsSomewhere[i]) {
            const int left = piece.count - placed[i];
            score.leftOut += left;
            score.leftArea += left * areaOf(piece.width, piece.height).count();
        }
    }
    for (const FilledSheet& filled : filling) {
        if (!filled.layout.placed.empty()) {
            score.keptBack += problem.sheets[filled.sheet].isKeptBack ? 1 : 0;
            score.cost += tasks.cost[filled.sheet];
            score.offcuts += offcutScore(problem, filled.layout);
        }
    }
    return score;
}

} // namespace headcap::core
