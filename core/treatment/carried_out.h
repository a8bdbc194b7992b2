// Which of several lines a step carries out.
#pragma once

#include <string>
#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

// The line it names; or of those with its technique the one with its place, else the first. Null:
// none of them, or the step is struck.
[[nodiscard]] const ProposalLine* carriedOut(const JobFile& file, const Step& step,
                                             const std::vector<const ProposalLine*>& lines);

// Of a line that lists several places and was begun, those that no step at hand says to be done:
// "C5" of "B2, C5". Nothing where a step says its place in other words, or none.
[[nodiscard]] std::vector<std::string> placesNotDone(const JobFile& file, const ProposalLine& line);

} // namespace headcap::core
