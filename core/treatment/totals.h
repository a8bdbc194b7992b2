// The options and lines of a proposal, and what the bench has spent on a line; what they cost is
// cost.h.
#pragma once

#include <cstddef>
#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

// Of a proposal, and of an option, in the order of their positions.
[[nodiscard]] std::vector<const ProposalOption*> optionsOf(const JobFile& file,
                                                           const Id<Proposal>& proposal);
[[nodiscard]] std::vector<const ProposalLine*> linesOf(const JobFile& file,
                                                       const Id<ProposalOption>& option);

// The minutes its lines say.
[[nodiscard]] Minutes minutesOf(const JobFile& file, const Id<ProposalOption>& option);

// Lines whose technique can't be undone.
[[nodiscard]] std::vector<const ProposalLine*> irreversibleLines(const JobFile& file,
                                                                 const Id<ProposalOption>& option);

struct LineWork {
    Minutes minutes{0};
    std::size_t steps = 0;
};
// Standing steps that carry out a line. One that names no line counts for one of the option's lines
// with its technique, and for no other (carried_out.h).
[[nodiscard]] LineWork workedOn(const JobFile& file, const ProposalLine& line);

} // namespace headcap::core
