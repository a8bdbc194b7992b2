// Which sheets to cut: every choice of them, the cheapest first, sheets to be kept back last.
#pragma once

#include <cstdint>
#include <optional>
#include <queue>
#include <vector>

#include "core/cutting/cut_plan.h"
#include "core/cutting/stock_tasks.h"

namespace headcap::core {

struct SheetChoice {
    std::vector<std::size_t> sheets; // one entry a sheet, indices into the problem's
    int keptBack = 0;
    std::int64_t cost = 0;
    double area = 0; // mm², usable
};

class SheetChoices {
public:
    SheetChoices(const CutProblem& problem, const StockTasks& tasks);

    // The next choice, or nothing once there are no more, or too many were looked at.
    [[nodiscard]] std::optional<SheetChoice> next();
    // Whether `next` gave up, and dearer choices were never looked at.
    [[nodiscard]] bool isCutShort() const { return m_isCutShort; }

private:
    struct Open {
        SheetChoice choice;
        std::size_t last = 0; // in m_order: only this kind or a later one is added
        int ofLast = 0;
        bool operator<(const Open& other) const;
    };
    void extend(const Open& open);
    void add(const SheetChoice& to, std::size_t kind, int ofKind);

    const CutProblem& m_problem;
    const StockTasks& m_tasks;
    std::vector<std::size_t> m_order;
    std::priority_queue<Open> m_open;
    int m_taken = 0;
    bool m_isCutShort = false;
};

// Square millimetres of a sheet that can be used.
[[nodiscard]] double usableArea(const CutProblem& problem, const StockTasks& tasks,
                                std::size_t sheet);

} // namespace headcap::core
