// Lots, and materials in words, with their amounts, in a line of the log. An amount belongs to the
// lot beside it; one that stands beside none is left in the description. Inside of the line's
// reader.
#pragma once

#include <vector>

#include "core/treatment/line_words.h"

namespace headcap::core::line {

// Pieces cut for the job are taken by their number: "26-003 2 pieces".
[[nodiscard]] std::vector<LineUse> takeMaterials(Words& words, const LineContext& context);

// "2 g of paste 26-014 wasted"; "2 g wasted" of the one lot that is counted so. Once the
// technique is taken.
void takeWasted(Words& words, StepKind kind, const Shelf& shelf, std::vector<LineUse>& uses);

} // namespace headcap::core::line
