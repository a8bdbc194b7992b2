// What findings of the collation come to in words.
#pragma once

#include <string>
#include <vector>

#include "core/collation/collation_record.h"
#include "core/collation/leaf_places.h"

namespace headcap::core {

// Of one leaf, which is named beside it: "misnumbered 12 for 21", "misbound (after K5)".
[[nodiscard]] std::string wordsOf(const CollationFinding& finding);

// "lacks K2–K3", "E3 misbound (after E5; belongs after E2)": findings of one kind together, in the
// order of the kinds, which is that of their weight.
[[nodiscard]] std::vector<std::string> departuresOf(const LaidBook& book,
                                                    const std::vector<CollationFinding>& findings);

} // namespace headcap::core
