#include "core/cutting/all_pieces.h"

#include <algorithm>
#include <map>
#include <optional>

#include "core/cutting/fill_in_turn.h"
#include "core/cutting/gather_cuts.h"
#include "core/cutting/greedy_fill.h"
#include "core/cutting/offcut_squeeze.h"
#include "core/cutting/sheet_choice.h"
#include "core/cutting/sheet_solver.h"

namespace headcap::core {

namespace {

constexpr int kFirstTries = 80;   // whole fillings, to have a plan to do better than
constexpr int kTriesAChoice = 60; // before the search is asked
constexpr int kMostChoicesTried = 200;
constexpr int kMostImprovements = 1500;
constexpr std::uint64_t kWorkOfFit = 8; // one fit tried, in the units of the search
constexpr int kTurnsHarder = 6;
constexpr std::size_t kMostInHardTurn = 30; // sheets
constexpr std::size_t kMostInTurn = 6;      // sheets a choice may have for the search to be asked

class AllPieces {
public:
    AllPieces(const CutProblem& problem, const StockTasks& tasks, SearchBudget& budget)
        : m_problem(problem), m_tasks(tasks), m_budget(budget), m_wanted(problem.pieces.size()),
          m_worth(problem.pieces.size()) {
        for (std::size_t i = 0; i < m_wanted.size(); ++i) {
            const WantedPiece& piece = problem.pieces[i];
            m_wanted[i] = tasks.fitsSomewhere[i] ? piece.count : 0;
            m_worth[i] = areaOf(piece.width, piece.height).count();
            m_totalWorth += m_wanted[i] * m_worth[i];
        }
    }

    AllPiecesAnswer run() {
        if (m_totalWorth == 0) {
            m_answer.isProvedBest = true;
            return std::move(m_answer);
        }
        fillFirst();
        if (m_answer.score.leftOut > 0) {
            fillHarder();
        }
        if (m_answer.score.leftOut == 0) {
            m_answer.isProvedBest = tryCheaperChoices();
        }
        improveOffcuts();
        return std::move(m_answer);
    }

private:
    bool offer(Filling filling) {
        const FillingScore score = scoreOf(m_problem, m_tasks, filling);
        if (m_hasAnswer && !score.isBetterThan(m_answer.score)) {
            return false;
        }
        m_hasAnswer = true;
        m_answer.filling = std::move(filling);
        m_answer.score = score;
        return true;
    }

    // One greedy filling; says whether it holds every piece.
    bool fillOnce(const std::vector<std::size_t>& sheets) {
        FillResult result = fillGreedily(m_tasks, sheets, drawOrder(m_problem, m_wanted, m_dice),
                                         drawRules(m_dice));
        m_budget.spend(result.work * kWorkOfFit);
        const bool isWhole = result.placed == m_wanted;
        offer(std::move(result.filling));
        return isWhole;
    }

    // Sheets in an order to be begun in: those kept back last, the others by what they cost, or
    // cost for their size.
    std::vector<std::size_t> drawSheets() {
        std::vector<std::size_t> sheets;
        std::vector<double> key(m_problem.sheets.size());
        const int kind = m_dice.below(3);
        for (std::size_t i = 0; i < key.size(); ++i) {
            const double area = usableArea(m_problem, m_tasks, i);
            const auto cost = static_cast<double>(m_tasks.cost[i]);
            key[i] = kind == 0 ? cost : kind == 1 ? cost / area : -area;
            sheets.insert(sheets.end(), static_cast<std::size_t>(m_problem.sheets[i].count), i);
        }
        std::ranges::stable_sort(sheets, {}, [&](std::size_t i) {
            return std::pair(m_problem.sheets[i].isKeptBack, key[i]);
        });
        return sheets;
    }

    void fillFirst() {
        for (int i = 0; i < kFirstTries && (i == 0 || !m_budget.isSpent()); ++i) {
            fillOnce(drawSheets());
        }
        for (int i = 0; i < kMostImprovements && m_answer.score.leftOut > 0; ++i) {
            if (m_budget.isSpent()) {
                return;
            }
            fillOnce(drawSheets());
        }
    }

    // There is too little to cut from, or it is hard to use: the search fills the sheets in turn,
    // by the number of pieces and by their area.
    void fillHarder() {
        std::vector<std::int64_t> byNumber(m_worth.size(), 1);
        for (int i = 0; i < kTurnsHarder && !m_budget.isSpent(); ++i) {
            const std::vector<std::size_t> sheets = drawSheets();
            if (sheets.size() > kMostInHardTurn) {
                return;
            }
            SearchBudget part(m_budget, m_budget.left() / static_cast<std::uint64_t>(kTurnsHarder));
            offer(fillInTurn(m_tasks, sheets, m_wanted, i % 2 == 0 ? m_worth : byNumber, part)
                      .filling);
            m_budget.spend(part.spent());
        }
    }

    // Whether a choice costs less than the answer so far.
    [[nodiscard]] bool isCheaper(const SheetChoice& choice) const {
        return std::pair(choice.keptBack, choice.cost) <
               std::pair(m_answer.score.keptBack, m_answer.score.cost);
    }

    // True where it is proved that no choice costs less than the answer.
    bool tryCheaperChoices() {
        SheetChoices choices(m_problem, m_tasks);
        bool isProved = true;
        int tried = 0;
        while (const std::optional<SheetChoice> choice = choices.next()) {
            if (!isCheaper(*choice)) {
                return isProved;
            }
            if (m_budget.isSpent() || tried >= kMostChoicesTried) {
                return false;
            }
            if (isTooSmall(*choice)) {
                continue;
            }
            ++tried;
            const Feasibility found = tryChoice(choice->sheets);
            if (found == Feasibility::yes) {
                return isProved;
            }
            isProved = isProved && found == Feasibility::no;
        }
        return isProved && !choices.isCutShort();
    }

    enum class Feasibility { yes, no, unknown };

    // Provably too small, from area alone or from what the search proved of single sheets.
    bool isTooSmall(const SheetChoice& choice) {
        if (choice.area * 1e6 * (1 + 1e-9) < static_cast<double>(m_totalWorth) &&
            !shrinksPieces()) {
            return true;
        }
        std::vector<bool> fits(m_wanted.size());
        for (const std::size_t sheet : choice.sheets) {
            for (const SheetOption& option : m_tasks.sheets[sheet].task.options) {
                fits[static_cast<std::size_t>(option.type)] = true;
            }
        }
        for (std::size_t i = 0; i < fits.size(); ++i) {
            if (m_wanted[i] > 0 && !fits[i]) {
                return true;
            }
        }
        std::int64_t most = 0;
        for (const std::size_t sheet : choice.sheets) {
            most += mostOf(sheet);
        }
        return most < m_totalWorth;
    }

    // Pasted pieces are cut smaller than they are wanted: their area says nothing then.
    [[nodiscard]] bool shrinksPieces() const {
        return std::ranges::any_of(m_problem.pieces, &WantedPiece::isPasted);
    }

    // The most area of pieces that one sheet can give.
    std::int64_t mostOf(std::size_t sheet) {
        const auto [at, isNew] = m_mostOf.try_emplace(sheet, 0);
        if (isNew) {
            SearchBudget part(m_budget, m_budget.left() / 10);
            at->second = fillInTurn(m_tasks, {sheet}, m_wanted, m_worth, part).boundOfFirst;
            m_budget.spend(part.spent());
        }
        return at->second;
    }

    // std::ranges::rotate gives what clang 14 can't read of this library.
    void turnBySome(std::vector<std::size_t>& sheets) {
        std::rotate(sheets.begin(), sheets.begin() + m_dice.below(static_cast<int>(sheets.size())),
                    sheets.end());
    }

    Feasibility tryChoice(std::vector<std::size_t> sheets) {
        for (int i = 0; i < kTriesAChoice && !m_budget.isSpent(); ++i) {
            turnBySome(sheets);
            if (fillOnce(sheets)) {
                return Feasibility::yes;
            }
        }
        if (sheets.size() > kMostInTurn) {
            return Feasibility::unknown;
        }
        SearchBudget part(m_budget, m_budget.left() / 6);
        TurnResult turn = fillInTurn(m_tasks, sheets, m_wanted, m_worth, part);
        m_budget.spend(part.spent());
        if (turn.value == m_totalWorth) {
            offer(std::move(turn.filling));
            return Feasibility::yes;
        }
        const bool isProved = sheets.size() == 1 && turn.boundOfFirst < m_totalWorth;
        return isProved ? Feasibility::no : Feasibility::unknown;
    }

    void improveOffcuts() {
        std::vector<std::size_t> sheets;
        for (const FilledSheet& filled : m_answer.filling) {
            if (!filled.layout.placed.empty()) {
                sheets.push_back(filled.sheet);
            }
        }
        const std::uint64_t keep = m_budget.left() / 2;
        for (int i = 0; i < kMostImprovements && m_budget.left() > keep; ++i) {
            turnBySome(sheets);
            fillOnce(sheets);
        }
        squeezeOffcuts(m_problem, m_tasks, m_worth, m_answer.filling, m_budget);
        gatherCuts(m_problem, m_tasks, m_answer.filling);
        m_answer.score = scoreOf(m_problem, m_tasks, m_answer.filling);
    }

    const CutProblem& m_problem;
    const StockTasks& m_tasks;
    SearchBudget& m_budget;
    std::vector<int> m_wanted;
    std::vector<std::int64_t> m_worth;
    std::int64_t m_totalWorth = 0;
    std::map<std::size_t, std::int64_t> m_mostOf;
    PlanDice m_dice{1};
    AllPiecesAnswer m_answer;
    bool m_hasAnswer = false;
};

} // namespace

AllPiecesAnswer cutAllPieces(const CutProblem& problem, const StockTasks& tasks,
                             SearchBudget& budget) {
    return AllPieces(problem, tasks, budget).run();
}

} // namespace headcap::core
