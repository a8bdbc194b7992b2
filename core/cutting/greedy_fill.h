// Fills sheets with pieces one after another, each into the free rectangle it suits best, which is
// then cut in two. Quick and rough: run many times in different orders, the best is often very
// good.
#pragma once

#include <cstdint>
#include <vector>

#include "core/cutting/stock_tasks.h"

namespace headcap::core {

// The same numbers on every machine (SplitMix64, Steele, Lea & Flood 2014).
class PlanDice {
public:
    explicit PlanDice(std::uint64_t seed) : m_state(seed) {}
    std::uint64_t next() {
        std::uint64_t z = (m_state += 0x9E3779B97F4A7C15ULL);
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
        return z ^ (z >> 31);
    }
    int below(int n) { return static_cast<int>(next() % static_cast<std::uint64_t>(n)); }
    double unit() { return static_cast<double>(next() >> 11) / 9007199254740992.0; }

private:
    std::uint64_t m_state;
};

enum class FillFit { leastArea, leastShortSide, leastLongSide };
enum class FillSplit { largestRemainder, leastRemainder, acrossFirst, downFirst };

struct FillRules {
    FillFit fit = FillFit::leastArea;
    FillSplit split = FillSplit::largestRemainder;
    bool opensAllAtOnce = false; // else a sheet is begun when a piece fits on none before
};

struct FillResult {
    Filling filling;         // one entry for every sheet given, cut or not
    std::vector<int> placed; // by type
    std::uint64_t work = 0;
};

// `sheets` in the order in which they are begun; `pieces` are types, in the order of placing.
[[nodiscard]] FillResult fillGreedily(const StockTasks& tasks,
                                      const std::vector<std::size_t>& sheets,
                                      const std::vector<int>& pieces, const FillRules& rules);

// An order of placing the counts wanted, large pieces first, more or less shuffled.
[[nodiscard]] std::vector<int> drawOrder(const CutProblem& problem, const std::vector<int>& counts,
                                         PlanDice& dice);
[[nodiscard]] FillRules drawRules(PlanDice& dice);

} // namespace headcap::core
