#include "core/cutting/fill_in_turn.h"

#include "core/cutting/sheet_solver.h"

namespace headcap::core {

TurnResult fillInTurn(const StockTasks& tasks, const std::vector<std::size_t>& sheets,
                      const std::vector<int>& wanted, const std::vector<std::int64_t>& worth,
                      SearchBudget& budget) {
    TurnResult result;
    result.left = wanted;
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        SheetTask task = tasks.sheets[sheets[i]].task;
        task.most = result.left;
        task.value = worth;
        SearchBudget part(budget, budget.left() / (sheets.size() - i));
        const SheetAnswer answer = solveSheet(task, part);
        budget.spend(part.spent());
        const std::vector<int> counts = countsOf(answer.tree, task);
        for (std::size_t type = 0; type < counts.size(); ++type) {
            result.left[type] -= counts[type];
        }
        result.value += answer.value;
        result.boundOfFirst = i == 0 ? answer.bound : result.boundOfFirst;
        result.filling.push_back({sheets[i], layOut(answer.tree, task)});
    }
    return result;
}

} // namespace headcap::core
