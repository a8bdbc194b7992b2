// What an option of a proposal comes to, and what the bench has spent on a line of it. Prices of
// different currencies stand side by side; nothing converts.
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

struct OptionTotals {
    std::size_t lines = 0;
    Minutes minutes{0};
    std::vector<Money> prices{}; // one a currency, in the order of the lines
    std::size_t unpriced = 0;    // lines that name no price
    std::size_t uncounted = 0;   // lines whose price is beyond counting
};
[[nodiscard]] OptionTotals totalsOf(const JobFile& file, const Id<ProposalOption>& option);

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
