#include "core/cutting/most_value.h"

#include <algorithm>
#include <cmath>

#include "core/cutting/all_pieces.h"
#include "core/cutting/fill_in_turn.h"
#include "core/cutting/filling_score.h"
#include "core/cutting/greedy_fill.h"

namespace headcap::core {

namespace {

constexpr std::int64_t kMostGreedyPieces = 3'000;
constexpr int kGreedyTries = 60;
constexpr std::uint64_t kWorkOfFit = 8;

class MostValue {
public:
    MostValue(const CutProblem& problem, const StockTasks& tasks, SearchBudget& budget)
        : m_problem(problem), m_tasks(tasks), m_budget(budget) {
        for (std::size_t i = 0; i < problem.pieces.size(); ++i) {
            const std::int64_t value = valueOf(problem.pieces[i]);
            m_worth.push_back(value);
            m_wanted.push_back(value > 0 ? mostThatFit(i) : 0);
            m_pieces += m_wanted.back();
        }
        for (std::size_t i = 0; i < problem.sheets.size(); ++i) {
            m_sheets.insert(m_sheets.end(), static_cast<std::size_t>(problem.sheets[i].count), i);
        }
    }

    MostValueAnswer run() {
        if (m_pieces == 0) {
            m_answer.isProvedBest = true;
            return std::move(m_answer);
        }
        if (m_pieces <= kMostGreedyPieces) {
            fillGreedilyFirst();
        }
        if (m_sheets.size() > 1 && holdsAll(m_answer.filling)) {
            return cheapest();
        }
        fillByOrder();
        return std::move(m_answer);
    }

private:
    // As many as are wanted, or as the area of the sheets could hold.
    [[nodiscard]] int mostThatFit(std::size_t piece) const {
        double most = 0;
        for (std::size_t i = 0; i < m_problem.sheets.size(); ++i) {
            const SheetTask& task = m_tasks.sheets[i].task;
            double room = 0;
            for (const SheetOption& option : task.options) {
                if (option.type == static_cast<int>(piece)) {
                    room = std::max(room, static_cast<double>(task.width) /
                                              static_cast<double>(option.width) *
                                              static_cast<double>(task.height) /
                                              static_cast<double>(option.height));
                }
            }
            most += std::floor(room + 1e-6) * m_problem.sheets[i].count;
        }
        return static_cast<int>(std::min(most, static_cast<double>(m_problem.pieces[piece].count)));
    }

    void offer(Filling filling) {
        const std::vector<int> placed = placedIn(m_tasks, filling);
        std::int64_t value = 0;
        for (std::size_t i = 0; i < placed.size(); ++i) {
            value += placed[i] * m_worth[i];
        }
        if (value > m_answer.value) {
            m_answer.value = value;
            m_answer.filling = std::move(filling);
        }
    }

    [[nodiscard]] bool holdsAll(const Filling& filling) const {
        return placedIn(m_tasks, filling) == m_wanted;
    }

    void fillGreedilyFirst() {
        PlanDice dice(1);
        for (int i = 0; i < kGreedyTries && (i == 0 || !m_budget.isSpent()); ++i) {
            FillResult result = fillGreedily(m_tasks, m_sheets,
                                             drawOrder(m_problem, m_wanted, dice), drawRules(dice));
            m_budget.spend(result.work * kWorkOfFit);
            offer(std::move(result.filling));
        }
    }

    // Everything of value fits: what remains is to spend little.
    MostValueAnswer cheapest() {
        AllPiecesAnswer all = cutAllPieces(m_problem, m_tasks, m_budget);
        offer(std::move(all.filling));
        m_answer.isProvedBest = true;
        return std::move(m_answer);
    }

    // Sheets one after another, the largest first, the smallest first, the cheapest first.
    void fillByOrder() {
        const std::size_t orders = m_sheets.size() == 1 ? 1 : 3;
        for (std::size_t i = 0; i < orders; ++i) {
            std::vector<std::size_t> sheets = m_sheets;
            std::ranges::stable_sort(sheets, {}, [&](std::size_t sheet) {
                const SheetTask& task = m_tasks.sheets[sheet].task;
                const double area =
                    static_cast<double>(task.width) * static_cast<double>(task.height);
                return i == 0 ? -area : i == 1 ? area : static_cast<double>(m_tasks.cost[sheet]);
            });
            SearchBudget part(m_budget, m_budget.left() / (orders - i));
            TurnResult turn = fillInTurn(m_tasks, sheets, m_wanted, m_worth, part);
            m_budget.spend(part.spent());
            offer(std::move(turn.filling));
            if (sheets.size() == 1) {
                m_answer.isProvedBest = m_answer.value >= turn.boundOfFirst;
            }
        }
        m_answer.isProvedBest = m_answer.isProvedBest || holdsAll(m_answer.filling);
    }

    const CutProblem& m_problem;
    const StockTasks& m_tasks;
    SearchBudget& m_budget;
    std::vector<int> m_wanted;
    std::vector<std::int64_t> m_worth;
    std::vector<std::size_t> m_sheets;
    std::int64_t m_pieces = 0;
    MostValueAnswer m_answer;
};

} // namespace

MostValueAnswer cutMostValue(const CutProblem& problem, const StockTasks& tasks,
                             SearchBudget& budget) {
    return MostValue(problem, tasks, budget).run();
}

} // namespace headcap::core
