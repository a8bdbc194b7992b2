#include "core/cutting/sheet_choice.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace headcap::core {

namespace {
constexpr int kMostChoices = 20'000;
}

double usableArea(const CutProblem& problem, const StockTasks& tasks, std::size_t sheet) {
    const SheetTask& task = tasks.sheets[sheet].task;
    const std::int64_t kerf = problem.rules.kerf.count();
    return static_cast<double>(task.width - kerf) / 1e6 * static_cast<double>(task.height - kerf) /
           1e6;
}

bool SheetChoices::Open::operator<(const Open& other) const {
    const auto key = [](const Open& o) {
        return std::tuple(o.choice.keptBack, o.choice.cost, o.choice.sheets.size());
    };
    return key(*this) != key(other) ? key(other) < key(*this) : choice.area < other.choice.area;
}

SheetChoices::SheetChoices(const CutProblem& problem, const StockTasks& tasks)
    : m_problem(problem), m_tasks(tasks), m_order(problem.sheets.size()) {
    std::iota(m_order.begin(), m_order.end(), std::size_t{0});
    std::ranges::stable_sort(m_order, {}, [&](std::size_t sheet) {
        return std::pair(problem.sheets[sheet].isKeptBack, tasks.cost[sheet]);
    });
    for (std::size_t kind = 0; kind < m_order.size(); ++kind) {
        add({}, kind, 1);
    }
}

std::optional<SheetChoice> SheetChoices::next() {
    if (m_open.empty() || m_isCutShort) {
        return std::nullopt;
    }
    Open open = m_open.top();
    m_open.pop();
    m_isCutShort = ++m_taken >= kMostChoices;
    extend(open);
    return std::move(open.choice);
}

void SheetChoices::extend(const Open& open) {
    for (std::size_t kind = open.last; kind < m_order.size(); ++kind) {
        const int already = kind == open.last ? open.ofLast : 0;
        if (already < m_problem.sheets[m_order[kind]].count) {
            add(open.choice, kind, already + 1);
        }
    }
}

void SheetChoices::add(const SheetChoice& to, std::size_t kind, int ofKind) {
    const std::size_t sheet = m_order[kind];
    Open open{to, kind, ofKind};
    open.choice.sheets.push_back(sheet);
    open.choice.keptBack += m_problem.sheets[sheet].isKeptBack ? 1 : 0;
    open.choice.cost += m_tasks.cost[sheet];
    open.choice.area += usableArea(m_problem, m_tasks, sheet);
    m_open.push(std::move(open));
}

} // namespace headcap::core
