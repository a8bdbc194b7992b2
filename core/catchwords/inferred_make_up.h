// The make-up read out of the account of a book's leaves: its gatherings, the formula as
// bibliographers write it (runs of the 23-letter alphabet, π and χ for unsigned gatherings,
// brackets where no mark was read, lacking leaves in parentheses) and the extent as printed.
#pragma once

#include <string>
#include <vector>

#include "core/catchwords/leaf_diagnosis.h"
#include "core/catchwords/leaf_story.h"

namespace headcap::core {

[[nodiscard]] std::vector<InferredGathering>
gatheringsOf(const BoundBook& book, const BookHabits& habits, const std::vector<StoryLeaf>& story);

[[nodiscard]] std::string formulaOf(const std::vector<InferredGathering>& gatherings);

[[nodiscard]] std::string extentOf(const BoundBook& book, const std::vector<StoryLeaf>& story);

} // namespace headcap::core
