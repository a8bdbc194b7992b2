// What a line of the log denies: "not washed", "no washing", "washing not done". The log is of what
// was done. Inside of the line's reader.
#pragma once

#include "core/treatment/line_words.h"

namespace headcap::core::line {

// Once the technique is taken. Words between the denial and the technique may stand, but nothing
// that was understood.
[[nodiscard]] bool deniesTechnique(const Words& words);

// "lunch", "no work": of a line that says no technique.
[[nodiscard]] bool speaksOfPause(const Words& words);

} // namespace headcap::core::line
