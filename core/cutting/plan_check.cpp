#include "core/cutting/plan_check.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "core/cutting/cut_simulation.h"

namespace headcap::core {

namespace {

std::int64_t areaCount(const CutRect& r) {
    return areaOf(r.width, r.height).count();
}

class Checker {
public:
    Checker(const CutProblem& problem, const CutPlan& plan) : m_problem(problem), m_plan(plan) {}

    std::vector<PlanFinding> run() {
        findSheets();
        if (m_findings.empty()) {
            cutAll();
            for (std::size_t i = 0; i < m_plan.placed.size(); ++i) {
                checkPlaced(i);
            }
            for (std::size_t i = 0; i < m_plan.offcuts.size(); ++i) {
                checkOffcut(i);
            }
            checkCounts();
            checkSums();
        }
        return std::move(m_findings);
    }

private:
    void find(PlanFault fault, std::size_t index) { m_findings.push_back({fault, index}); }

    void findSheet(const SheetPlace& on, std::size_t index) {
        const auto& sheets = m_problem.sheets;
        if (on.sheet >= sheets.size() || on.number < 1 || on.number > sheets[on.sheet].count) {
            find(PlanFault::noSuchSheet, index);
        } else if (!m_simulation.hasSheet(on)) {
            m_simulation.addSheet(on, sheets[on.sheet].width, sheets[on.sheet].height);
            m_used.insert(on);
        }
    }

    void findSheets() {
        for (std::size_t i = 0; i < m_plan.placed.size(); ++i) {
            findSheet(m_plan.placed[i].on, i);
            if (m_plan.placed[i].piece >= m_problem.pieces.size()) {
                find(PlanFault::noSuchPiece, i);
            }
        }
        for (std::size_t i = 0; i < m_plan.cuts.size(); ++i) {
            findSheet(m_plan.cuts[i].on, i);
        }
        for (std::size_t i = 0; i < m_plan.offcuts.size(); ++i) {
            findSheet(m_plan.offcuts[i].on, i);
        }
        for (std::size_t i = 0; i < m_plan.leftOut.size(); ++i) {
            if (m_plan.leftOut[i].piece >= m_problem.pieces.size()) {
                find(PlanFault::noSuchPiece, i);
            }
        }
    }

    void cutAll() {
        std::map<SheetPlace, int> order;
        for (std::size_t i = 0; i < m_plan.cuts.size(); ++i) {
            const SheetCut& cut = m_plan.cuts[i];
            if (cut.order != ++order[cut.on]) {
                find(PlanFault::orderOfCuts, i);
            }
            const auto parts = m_simulation.cut(cut, m_problem.rules.kerf);
            if (!parts) {
                find(PlanFault::cutNotEdgeToEdge, i);
            } else if (std::min(parts->first, parts->second) < m_problem.rules.leastStrip &&
                       !isTrimming(cut)) {
                find(PlanFault::stripTooNarrow, i);
            }
        }
    }

    // What is left of a sheet once its edges are trimmed: the blade's own width is the least that
    // can be trimmed off.
    [[nodiscard]] CutRect usable(const StockSheet& sheet) const {
        const Length kerf = m_problem.rules.kerf;
        const auto start = [&](Length trim) { return trim.isZero() ? trim : std::max(trim, kerf); };
        const Length x = start(sheet.trim.left);
        const Length y = start(sheet.trim.top);
        return {x, y, sheet.width - sheet.trim.right - x, sheet.height - sheet.trim.bottom - y};
    }

    [[nodiscard]] bool isTrimming(const SheetCut& cut) const {
        const StockSheet& sheet = m_problem.sheets[cut.on.sheet];
        const CutRect inner = usable(sheet);
        const Length after = cut.at + m_problem.rules.kerf;
        return cut.axis == CutAxis::x ? (after == inner.x || cut.at == inner.x + inner.width)
                                      : (after == inner.y || cut.at == inner.y + inner.height);
    }

    // Whether a side as cut gives the side wanted, to the tenth of a millimetre it is rounded to.
    static bool givesSide(Length cut, Length wanted, Length overlap, std::int64_t ppm) {
        const double grown =
            static_cast<double>((cut - overlap * 2).count()) * (1 + static_cast<double>(ppm) / 1e6);
        const double off = grown - static_cast<double>(wanted.count());
        return ppm == 0 ? cut == wanted + overlap * 2 : std::abs(off) < 70'000;
    }

    void checkPlaced(std::size_t index) {
        const PlacedPiece& placed = m_plan.placed[index];
        const WantedPiece& piece = m_problem.pieces[placed.piece];
        const StockSheet& sheet = m_problem.sheets[placed.on.sheet];
        if (!m_simulation.take(placed.on, placed.at)) {
            find(PlanFault::pieceNotCutOut, index);
        }
        const CutRect inner = usable(sheet);
        if (placed.at.x < inner.x || placed.at.y < inner.y ||
            placed.at.x + placed.at.width > inner.x + inner.width ||
            placed.at.y + placed.at.height > inner.y + inner.height) {
            find(PlanFault::pieceInTrim, index);
        }
        checkSize(index, placed, piece, sheet);
        if (placed.isTurned && !m_problem.rules.mayTurn) {
            find(PlanFault::turnedAgainstRule, index);
        }
        const bool runsAcross = (piece.grain != sheet.grain) != placed.isTurned;
        if (piece.grain != GrainWay::none && sheet.grain != GrainWay::none && runsAcross) {
            find(PlanFault::wrongGrain, index);
        }
    }

    void checkSize(std::size_t index, const PlacedPiece& placed, const WantedPiece& piece,
                   const StockSheet& sheet) {
        const bool isAlongX = sheet.grain == GrainWay::alongWidth;
        const bool isAlongY = sheet.grain == GrainWay::alongHeight;
        const Stretch by = piece.isPasted ? sheet.stretch : Stretch{};
        const Length acrossX = placed.isTurned ? piece.height : piece.width;
        const Length acrossY = placed.isTurned ? piece.width : piece.height;
        if (!givesSide(placed.at.width, acrossX, piece.overlap,
                       isAlongX ? by.alongPpm : by.acrossPpm) ||
            !givesSide(placed.at.height, acrossY, piece.overlap,
                       isAlongY ? by.alongPpm : by.acrossPpm)) {
            find(PlanFault::wrongSize, index);
        }
    }

    void checkOffcut(std::size_t index) {
        const PlannedOffcut& offcut = m_plan.offcuts[index];
        if (!m_simulation.take(offcut.on, offcut.at)) {
            find(PlanFault::offcutNotCutOut, index);
        }
        if (std::min(offcut.at.width, offcut.at.height) < m_problem.rules.leastOffcut) {
            find(PlanFault::offcutTooSmall, index);
        }
        if (offcut.grain != m_problem.sheets[offcut.on.sheet].grain) {
            find(PlanFault::wrongOffcutGrain, index);
        }
    }

    void checkCounts() {
        std::vector<int> counts(m_problem.pieces.size());
        for (std::size_t i = 0; i < m_plan.placed.size(); ++i) {
            const std::size_t piece = m_plan.placed[i].piece;
            if (++counts[piece] > m_problem.pieces[piece].count) {
                find(PlanFault::tooManyPlaced, i);
            }
        }
        for (std::size_t i = 0; i < m_plan.leftOut.size(); ++i) {
            counts[m_plan.leftOut[i].piece] += m_plan.leftOut[i].count;
        }
        for (std::size_t i = 0; i < counts.size(); ++i) {
            if (counts[i] != m_problem.pieces[i].count) {
                find(PlanFault::leftOutMiscounted, i);
            }
        }
    }

    void checkSums() {
        std::int64_t pieces = 0, offcuts = 0, sheets = 0, value = 0, cost = 0;
        for (const PlacedPiece& placed : m_plan.placed) {
            const WantedPiece& piece = m_problem.pieces[placed.piece];
            pieces += areaCount(placed.at);
            value += piece.value.value_or(areaOf(piece.width, piece.height).count());
        }
        for (const PlannedOffcut& offcut : m_plan.offcuts) {
            offcuts += areaCount(offcut.at);
        }
        for (const SheetPlace& on : m_used) {
            const StockSheet& sheet = m_problem.sheets[on.sheet];
            const std::int64_t area = areaOf(sheet.width, sheet.height).count();
            sheets += area;
            cost += sheet.cost.value_or(area);
        }
        if (pieces != m_plan.usedArea.count() || m_plan.waste.isNegative() ||
            pieces + offcuts + m_plan.waste.count() != sheets) {
            find(PlanFault::areasDoNotAddUp, 0);
        }
        if (value != m_plan.value) {
            find(PlanFault::wrongValue, 0);
        }
        if (cost != m_plan.cost) {
            find(PlanFault::wrongCost, 0);
        }
    }

    const CutProblem& m_problem;
    const CutPlan& m_plan;
    CutSimulation m_simulation;
    std::set<SheetPlace> m_used;
    std::vector<PlanFinding> m_findings;
};

} // namespace

std::vector<PlanFinding> checkPlan(const CutProblem& problem, const CutPlan& plan) {
    return Checker(problem, plan).run();
}

} // namespace headcap::core
