// What the owner decided about a proposal, and how what was done stands to it.
#pragma once

#include <string>
#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

// The latest decision on a proposal; nothing where there is none.
[[nodiscard]] const Decision* latestDecision(const JobFile& file, const Id<Proposal>& proposal);

// The approval in force: the latest decision on the latest proposal decided about, where it is an
// approval, with or without limits.
[[nodiscard]] const Decision* approval(const JobFile& file);

// The lines approved: of the option decided for, or of the proposal's only option with lines.
[[nodiscard]] std::vector<const ProposalLine*> approvedLines(const JobFile& file);
std::vector<const ProposalLine*> approvedLines(const JobFile&&) = delete; // they point into it

// "Tipping in, K5": a line in a few words.
[[nodiscard]] std::string lineTitle(const ProposalLine& line, const TechniquesInForce& techniques);

// Whether a step carries out a line: it names it, or names none and is of its technique.
[[nodiscard]] bool carriesOut(const Step& step, const ProposalLine& line);

// Approved lines that no standing step carries out, in their order.
[[nodiscard]] std::vector<const ProposalLine*> openLines(const JobFile& file);

// Work on the book itself: treatment, a removal, an uncovering. What only looks at it, and what
// befell it, is none.
[[nodiscard]] bool isWorkOnTheBook(StepKind kind);

// Standing steps of such work that no approved line covers; none where nothing is
// approved at all.
[[nodiscard]] std::vector<const Step*> unapprovedSteps(const JobFile& file);

} // namespace headcap::core
