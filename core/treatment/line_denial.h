// What a line of the log denies: "not washed", "no washing", "washing not done". The log is of what
// was done. Inside of the line's reader.
#pragma once

#include "core/treatment/line_words.h"

namespace headcap::core::line {

// Once the technique is taken. Words between the denial and the technique may stand, but nothing
// that was understood.
[[nodiscard]] bool deniesTechnique(const Words& words);

// "needs guarding", "guard K7 tomorrow": what is to be done is not done.
[[nodiscard]] bool speaksOfIntent(const Words& words);

// "lunch", "no work": of a line that says no technique.
[[nodiscard]] bool speaksOfPause(const Words& words);

// "mixed paste", "struck": what is done elsewhere than in a line.
[[nodiscard]] bool speaksOfMixing(const Words& words);
[[nodiscard]] bool speaksOfStriking(const Words& words);

} // namespace headcap::core::line
