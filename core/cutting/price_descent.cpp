#include "core/cutting/price_descent.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace headcap::core {

namespace {

constexpr double kFirstStep = 1.0;
constexpr double kLastStep = 0.005;
constexpr int kPatience = 12; // steps without a better bound before the step is shortened
constexpr int kMostSteps = 1500;
constexpr double kExactBits = 9007199254740992.0; // 2^53

// A power of two that divides prices finely, while the sums of a whole sheet stay exact.
double priceGrain(const SheetTask& task) {
    double total = 1;
    for (std::size_t i = 0; i < task.value.size(); ++i) {
        total += static_cast<double>(task.value[i]) * static_cast<double>(task.most[i]);
    }
    double grain = 1.0 / 1024;
    while (total / grain > kExactBits / 8) {
        grain *= 2;
    }
    return grain;
}

class Descent {
public:
    Descent(const SheetTask& task, const CutGrid& grid, SearchBudget& budget)
        : m_task(task), m_grid(grid), m_budget(budget), m_relaxed(task, grid), m_kept(task, grid),
          m_grain(priceGrain(task)), m_price(task.value.size()) {
        m_answer.bound = std::numeric_limits<std::int64_t>::max();
        m_answer.price = m_price;
    }

    PriceAnswer run() {
        double step = kFirstStep;
        int idle = 0;
        for (int i = 0; i < kMostSteps && step > kLastStep && !isProved(); ++i) {
            const double before = m_leastBound;
            std::vector<int> counts;
            double bound = 0;
            if (!relax(counts, bound)) {
                break;
            }
            idle = m_leastBound < before ? 0 : idle + 1;
            if (idle >= kPatience) {
                idle = 0;
                step /= 2;
                m_price = m_answer.price;
            }
            if (isProved() || !keep(i) || !move(counts, bound, step)) {
                break;
            }
        }
        return std::move(m_answer);
    }

private:
    [[nodiscard]] bool isProved() const { return m_answer.value >= m_answer.bound; }

    [[nodiscard]] std::vector<double> worth() const {
        std::vector<double> worth(m_price.size());
        for (std::size_t i = 0; i < worth.size(); ++i) {
            worth[i] = static_cast<double>(m_task.value[i]) - m_price[i];
        }
        return worth;
    }

    void offer(CutTree tree) {
        const std::int64_t value = valueOf(countsOf(tree, m_task), m_task);
        if (value > m_answer.value && isAllowed(tree, m_task)) {
            m_answer.value = value;
            m_answer.tree = std::move(tree);
        }
    }

    bool relax(std::vector<int>& counts, double& bound) {
        if (!m_relaxed.solve(worth(), m_budget)) {
            return false;
        }
        bound = m_relaxed.whole();
        for (std::size_t i = 0; i < m_price.size(); ++i) {
            bound += m_price[i] * static_cast<double>(m_task.most[i]);
        }
        if (bound < m_leastBound) {
            m_leastBound = bound;
            m_answer.bound = static_cast<std::int64_t>(std::floor(bound));
            m_answer.price = m_price;
        }
        CutTree tree = m_relaxed.trace();
        counts = countsOf(tree, m_task);
        offer(std::move(tree));
        return true;
    }

    // The dear half of each step: where the table is small, only now and then.
    bool keep(int step) {
        if (m_grid.work() < 1'000'000 && step % 4 != 0) {
            return true;
        }
        if (!m_kept.solve(worth(), m_budget)) {
            return false;
        }
        offer(m_kept.trace());
        return true;
    }

    bool move(const std::vector<int>& counts, double bound, double step) {
        double length = 0;
        std::vector<double> slope(counts.size());
        for (std::size_t i = 0; i < counts.size(); ++i) {
            slope[i] = static_cast<double>(counts[i] - m_task.most[i]);
            if (slope[i] < 0 && m_price[i] <= 0) {
                slope[i] = 0;
            }
            length += slope[i] * slope[i];
        }
        if (length == 0) {
            return false;
        }
        const double gap = std::max(bound - static_cast<double>(m_answer.value), 1.0);
        for (std::size_t i = 0; i < counts.size(); ++i) {
            const double price = m_price[i] + step * gap / length * slope[i];
            const double most = static_cast<double>(m_task.value[i]);
            m_price[i] = std::clamp(std::round(price / m_grain) * m_grain, 0.0, most);
        }
        return true;
    }

    const SheetTask& m_task;
    const CutGrid& m_grid;
    SearchBudget& m_budget;
    RelaxedValues m_relaxed;
    KeptValues m_kept;
    double m_grain;
    std::vector<double> m_price;
    double m_leastBound = std::numeric_limits<double>::infinity();
    PriceAnswer m_answer;
};

} // namespace

PriceAnswer descendPrices(const SheetTask& task, const CutGrid& grid, SearchBudget& budget) {
    return Descent(task, grid, budget).run();
}

} // namespace headcap::core
