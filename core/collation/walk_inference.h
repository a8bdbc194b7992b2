// A walk through a book whose make-up nobody has published: marks, numbers and catchwords as they
// come, leaf by leaf, and from them the gatherings and the formula, with what is sure and what is
// not.
#pragma once

#include <string>
#include <vector>

#include "core/catchwords/leaf_diagnosis.h"
#include "core/collation/walk_record.h"

namespace headcap::core {

struct InferredWalk {
    LeafDiagnosis diagnosis; // sentences call a page "leaf 12 verso"
    std::size_t leaves = 0;
    int gatheringsSure = 0;
    std::vector<std::string> doubts; // what is not sure of the make-up, a sentence each
};

// `entries`: of one inferring walk, in the order of their positions.
[[nodiscard]] InferredWalk inferFrom(const std::vector<WalkEntry>& entries);

} // namespace headcap::core
