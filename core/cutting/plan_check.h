// Checks a plan by cutting it: nothing of how plans are made is used here. Each cut must run from
// edge to edge of one part of the sheet as it then lies; at the end every piece and offcut must be
// one of the parts, every piece of the right size with its grain right, none more than wanted, and
// pieces, offcuts and waste must make up the sheets.
#pragma once

#include <cstddef>
#include <vector>

#include "core/cutting/cut_plan.h"

namespace headcap::core {

enum class PlanFault {
    noSuchSheet, // or more of one than there are
    noSuchPiece,
    orderOfCuts,      // not 1, 2, 3 … on a sheet
    cutNotEdgeToEdge, // no part of the sheet lies under it from edge to edge
    stripTooNarrow,
    pieceNotCutOut, // no part of the sheet is that piece
    pieceInTrim,
    wrongSize,
    wrongGrain,
    turnedAgainstRule,
    tooManyPlaced,
    leftOutMiscounted,
    offcutNotCutOut,
    offcutTooSmall,
    wrongOffcutGrain,
    areasDoNotAddUp,
    wrongValue,
    wrongCost,
};

struct PlanFinding {
    PlanFault fault = PlanFault::noSuchSheet;
    std::size_t index = 0; // of the piece placed, cut, offcut or piece left out
    friend bool operator==(const PlanFinding&, const PlanFinding&) = default;
};

[[nodiscard]] std::vector<PlanFinding> checkPlan(const CutProblem& problem, const CutPlan& plan);

} // namespace headcap::core
