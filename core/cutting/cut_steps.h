// The cuts of one sheet as steps at the shear: which part is taken, what is set at the gauge, and
// how often. Cuts that take equal strips off one part, one after the other, are one step.
#pragma once

#include "core/cutting/cut_plan.h"

namespace headcap::core {

struct CutStep {
    int first = 1, last = 1; // of the cuts' order
    CutAxis axis = CutAxis::x;
    CutRect part;   // as it lies on the sheet before the first of them
    Length measure; // from the part's left or top edge, and then from the cut before
    [[nodiscard]] int times() const { return last - first + 1; }
};

[[nodiscard]] std::vector<CutStep> cutSteps(const CutProblem& problem, const CutPlan& plan,
                                            const SheetPlace& on);

} // namespace headcap::core
