// Which of several lines a step carries out.
#pragma once

#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

// The line it names; or of those with its technique the one with its place, else the first. Null:
// none of them, or the step is struck.
[[nodiscard]] const ProposalLine* carriedOut(const JobFile& file, const Step& step,
                                             const std::vector<const ProposalLine*>& lines);

} // namespace headcap::core
