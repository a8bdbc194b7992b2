// The order the leaves of a copy are bound in, by its findings, and what puts them right.
#pragma once

#include <cstddef>
#include <vector>

#include "core/collation/collation_record.h"
#include "core/collation/leaf_moves.h"

namespace headcap::core {

// The leaves as they are bound: lacking ones left out, misbound ones where their findings say they
// were found ("after K5", "before B1"). Leaves found nowhere that can be read stay in their place.
[[nodiscard]] std::vector<std::size_t> boundOrder(const LaidBook& book,
                                                  const std::vector<CollationFinding>& findings);
[[nodiscard]] std::vector<LeafMove> movesFor(const LaidBook& book,
                                             const std::vector<CollationFinding>& findings);

} // namespace headcap::core
