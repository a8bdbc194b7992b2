// Reads the findings out of the account of a book's leaves: what lacks, what the printer
// misnumbered or missigned, what no account explains; each with the evidence for and against it.
#pragma once

#include <vector>

#include "core/catchwords/leaf_diagnosis.h"
#include "core/catchwords/leaf_story.h"

namespace headcap::core {

[[nodiscard]] std::vector<LeafFinding> findingsOf(const BoundBook& book, const LeafOrder& order,
                                                  const BookHabits& habits,
                                                  const std::vector<StoryLeaf>& story);

} // namespace headcap::core
