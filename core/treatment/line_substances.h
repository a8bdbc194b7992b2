// Substances that a line names without a lot: "1% H2O2", "isinglass 2%", "kozo 5gsm". Inside of the
// line's reader.
#pragma once

#include <vector>

#include "core/treatment/line_words.h"

namespace headcap::core::line {

// A substance beside a lot is that lot's name; old ones, and those that come away, are not put on.
// Of a step that is no treatment it must be said to be used: "with".
void takeSubstances(Words& words, StepKind kind, const Shelf& shelf, std::vector<LineUse>& uses);

} // namespace headcap::core::line
