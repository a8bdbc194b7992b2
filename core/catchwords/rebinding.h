// Leaves bound twice or out of their order. The order is cut where text, numbers or marks break,
// and the pieces are put where they meet their neighbours, by as few moves as do it.
#pragma once

#include <vector>

#include "core/catchwords/bound_leaf.h"
#include "core/catchwords/leaf_diagnosis.h"
#include "core/catchwords/leaf_links.h"

namespace headcap::core {

struct Rebinding {
    LeafOrder order;                   // as the printer meant it, duplicates left out
    std::vector<LeafFinding> findings; // duplicate and misbound
};

[[nodiscard]] Rebinding putInOrder(const BoundBook& book, const LeafLinks& links,
                                   const LeafOrder& bound);

} // namespace headcap::core
