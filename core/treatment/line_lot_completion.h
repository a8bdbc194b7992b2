// The lots, and the pieces cut for the job, that the last word of a line may become. Inside of its
// completion.
#pragma once

#include <vector>

#include "core/treatment/line_completion.h"
#include "core/treatment/line_words.h"

namespace headcap::core::line {

inline constexpr std::size_t kLeastLetters = 2; // of a word, before anything is offered

// What was cut for this job before whole sheets; the newest lots first, and none that is used up
// or named already.
[[nodiscard]] std::vector<LineCompletion> lotCompletions(const Words& words,
                                                         const LineContext& context);

} // namespace headcap::core::line
