#include "core/cutting/plan_writer.h"

#include <algorithm>

namespace headcap::core {

namespace {

Length nm(std::int64_t count) {
    return Length::nanometres(count);
}

// Writes one sheet: positions of the search have the kerf added to every length.
class SheetWriter {
public:
    SheetWriter(const CutProblem& problem, const StockTask& stock, SheetPlace on, CutPlan& plan)
        : m_sheet(problem.sheets[on.sheet]), m_rules(problem.rules), m_stock(stock), m_on(on),
          m_plan(plan) {}

    void write(const SheetLayout& layout) {
        trim();
        for (const TaskCut& cut : layout.cuts) {
            const Length across = cut.isAtX ? m_stock.x : m_stock.y;
            const Length along = cut.isAtX ? m_stock.y : m_stock.x;
            addCut(cut.isAtX ? CutAxis::x : CutAxis::y, across + nm(cut.at) - m_rules.kerf,
                   along + nm(cut.from), along + nm(cut.to) - m_rules.kerf);
        }
        for (const TaskPlaced& placed : layout.placed) {
            const auto option = static_cast<std::size_t>(placed.option);
            const SheetOption& size = m_stock.task.options[option];
            m_plan.placed.push_back({static_cast<std::size_t>(size.type), m_on,
                                     rect({placed.x, placed.y, size.width, size.height}),
                                     m_stock.isTurned[option]});
        }
        for (const TaskRect& free : layout.free) {
            const CutRect at = rect(free);
            const Length least = std::max(m_rules.leastOffcut, nm(1));
            if (at.width >= least && at.height >= least) {
                m_plan.offcuts.push_back({m_on, at, m_sheet.grain});
            }
        }
    }

private:
    [[nodiscard]] CutRect rect(const TaskRect& r) const {
        return {m_stock.x + nm(r.x), m_stock.y + nm(r.y), nm(r.width) - m_rules.kerf,
                nm(r.height) - m_rules.kerf};
    }

    void addCut(CutAxis axis, Length at, Length from, Length to) {
        m_plan.cuts.push_back({m_on, m_order++, axis, at, from, to});
    }

    void trim() {
        const EdgeTrim& by = m_sheet.trim;
        Length left, top, right = m_sheet.width;
        if (!by.left.isZero()) {
            addCut(CutAxis::x, m_stock.x - m_rules.kerf, top, m_sheet.height);
            left = m_stock.x;
        }
        if (!by.right.isZero()) {
            right = m_sheet.width - by.right;
            addCut(CutAxis::x, right, top, m_sheet.height);
        }
        if (!by.top.isZero()) {
            addCut(CutAxis::y, m_stock.y - m_rules.kerf, left, right);
        }
        if (!by.bottom.isZero()) {
            addCut(CutAxis::y, m_sheet.height - by.bottom, left, right);
        }
    }

    const StockSheet& m_sheet;
    const CutRules& m_rules;
    const StockTask& m_stock;
    SheetPlace m_on;
    CutPlan& m_plan;
    int m_order = 1;
};

void addUp(const CutProblem& problem, const StockTasks& tasks, CutPlan& plan) {
    std::vector<int> left;
    for (const WantedPiece& piece : problem.pieces) {
        left.push_back(piece.count);
    }
    for (const PlacedPiece& placed : plan.placed) {
        --left[placed.piece];
        plan.usedArea += areaOf(placed.at.width, placed.at.height);
        plan.value += valueOf(problem.pieces[placed.piece]);
    }
    plan.waste -= plan.usedArea;
    for (const PlannedOffcut& offcut : plan.offcuts) {
        plan.waste -= areaOf(offcut.at.width, offcut.at.height);
    }
    for (std::size_t i = 0; i < left.size(); ++i) {
        if (left[i] > 0) {
            plan.leftOut.push_back(
                {i, left[i],
                 tasks.fitsSomewhere[i] ? LeftOutReason::noRoom : LeftOutReason::fitsNoSheet});
        }
    }
}

} // namespace

CutPlan writePlan(const CutProblem& problem, const StockTasks& tasks, const Filling& filling,
                  bool isProvedBest) {
    std::vector<const FilledSheet*> order;
    for (const FilledSheet& filled : filling) {
        if (!filled.layout.placed.empty()) {
            order.push_back(&filled);
        }
    }
    std::ranges::stable_sort(order, {}, [](const FilledSheet* filled) { return filled->sheet; });
    CutPlan plan;
    plan.isProvedBest = isProvedBest;
    std::vector<int> numbers(problem.sheets.size());
    for (const FilledSheet* filled : order) {
        const StockSheet& sheet = problem.sheets[filled->sheet];
        const SheetPlace on{filled->sheet, ++numbers[filled->sheet]};
        SheetWriter(problem, tasks.sheets[filled->sheet], on, plan).write(filled->layout);
        plan.cost += tasks.cost[filled->sheet];
        plan.waste += areaOf(sheet.width, sheet.height);
    }
    addUp(problem, tasks, plan);
    return plan;
}

} // namespace headcap::core
