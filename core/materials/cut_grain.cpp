#include "core/materials/cut_grain.h"

#include <set>

namespace headcap::core {

GrainAtSpine grainAtSpine(const CutProblem& problem, const PlacedPiece& placed) {
    switch (problem.sheets[placed.on.sheet].grain) {
    case GrainWay::none:
        return GrainAtSpine::noGrain;
    case GrainWay::alongHeight:
        return placed.isTurned ? GrainAtSpine::across : GrainAtSpine::along;
    case GrainWay::alongWidth:
        return placed.isTurned ? GrainAtSpine::along : GrainAtSpine::across;
    }
    return GrainAtSpine::notSaid;
}

std::vector<std::size_t> piecesAcrossSpine(const CutProblem& problem, const CutPlan& plan) {
    std::set<std::size_t> across;
    for (const PlacedPiece& placed : plan.placed) {
        if (grainAtSpine(problem, placed) == GrainAtSpine::across) {
            across.insert(placed.piece);
        }
    }
    return {across.begin(), across.end()};
}

} // namespace headcap::core
