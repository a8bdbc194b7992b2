// Leaves bound in twice, known by their text.
#pragma once

#include <vector>

#include "core/catchwords/bound_leaf.h"
#include "core/catchwords/leaf_diagnosis.h"
#include "core/catchwords/leaf_links.h"

namespace headcap::core {

// Takes the second copies out of the order and says where they stand.
[[nodiscard]] std::vector<LeafFinding> takeOutDuplicates(const BoundBook& book,
                                                         const LeafLinks& links, LeafOrder& order);

} // namespace headcap::core
