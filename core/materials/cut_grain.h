// How the grain of cut pieces will lie in the book. A piece's height runs along the spine, as all
// pieces of work are proposed and typed (pieces_of_work.h).
#pragma once

#include <vector>

#include "core/cutting/cut_plan.h"
#include "core/treatment/step.h"

namespace headcap::core {

[[nodiscard]] GrainAtSpine grainAtSpine(const CutProblem& problem, const PlacedPiece& placed);

// The wanted pieces of which some would lie with their grain across the spine, each once, in their
// order. What has to be asked before a plan for a book is booked.
[[nodiscard]] std::vector<std::size_t> piecesAcrossSpine(const CutProblem& problem,
                                                         const CutPlan& plan);

} // namespace headcap::core
