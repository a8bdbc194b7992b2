#include "core/cutting/cut_steps.h"

#include <algorithm>

namespace headcap::core {

namespace {

// What a sheet has come apart into so far.
class PartsOfSheet {
public:
    PartsOfSheet(const StockSheet& sheet, Length kerf)
        : m_kerf(kerf), m_parts{{{}, {}, sheet.width, sheet.height}} {}

    // The part a cut divides; it lies in two parts afterwards.
    CutRect divide(const SheetCut& cut) {
        const auto at = std::ranges::find_if(
            m_parts, [&](const CutRect& part) { return isDivided(part, cut); });
        if (at == m_parts.end()) {
            return {};
        }
        const CutRect whole = *at;
        CutRect first = whole, second = whole;
        if (cut.axis == CutAxis::x) {
            first.width = cut.at - whole.x;
            second.x = cut.at + m_kerf;
            second.width = whole.x + whole.width - second.x;
        } else {
            first.height = cut.at - whole.y;
            second.y = cut.at + m_kerf;
            second.height = whole.y + whole.height - second.y;
        }
        *at = first;
        m_parts.push_back(second);
        return whole;
    }

private:
    static bool isDivided(const CutRect& part, const SheetCut& cut) {
        const bool isX = cut.axis == CutAxis::x;
        const Length across = isX ? part.x : part.y;
        const Length along = isX ? part.y : part.x;
        return cut.at >= across && cut.at < across + (isX ? part.width : part.height) &&
               cut.from == along && cut.to == along + (isX ? part.height : part.width);
    }

    Length m_kerf;
    std::vector<CutRect> m_parts;
};

Length endOf(const CutRect& part, CutAxis axis) {
    return axis == CutAxis::x ? part.x + part.width : part.y + part.height;
}

// The next cut goes on where the last ended, on what is left of the same part.
bool goesOn(const CutStep& step, const CutRect& left, CutAxis axis, Length measure) {
    return step.axis == axis && step.measure == measure &&
           endOf(step.part, axis) == endOf(left, axis) &&
           (axis == CutAxis::x ? step.part.y == left.y && step.part.height == left.height
                               : step.part.x == left.x && step.part.width == left.width);
}

} // namespace

std::vector<CutStep> cutSteps(const CutProblem& problem, const CutPlan& plan,
                              const SheetPlace& on) {
    PartsOfSheet parts(problem.sheets[on.sheet], problem.rules.kerf);
    std::vector<CutStep> steps;
    for (const SheetCut& cut : plan.cuts) {
        if (cut.on != on) {
            continue;
        }
        const CutRect part = parts.divide(cut);
        const Length measure = cut.at - (cut.axis == CutAxis::x ? part.x : part.y);
        if (!steps.empty() && goesOn(steps.back(), part, cut.axis, measure)) {
            steps.back().last = cut.order;
        } else {
            steps.push_back({cut.order, cut.order, cut.axis, part, measure});
        }
    }
    return steps;
}

} // namespace headcap::core
