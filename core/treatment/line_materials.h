// Lots, and materials in words, with their amounts, in a line of the log. An amount belongs to the
// lot beside it; one that stands beside none is left in the description. Inside of the line's
// reader.
#pragma once

#include <vector>

#include "core/treatment/line_words.h"

namespace headcap::core::line {

[[nodiscard]] std::vector<LineUse> takeMaterials(Words& words, const Shelf& shelf);

} // namespace headcap::core::line
