// Versions of a proposal, and what follows from sending one or from the owner's answer: a change
// after sending is a new version with its own decision, and doing nothing is among its options.
#pragma once

#include <optional>

#include "core/custody/job_states.h"
#include "core/record/job_file.h"

namespace headcap::core {

// An option without lines.
[[nodiscard]] bool offersDoingNothing(const JobFile& file, const Id<Proposal>& proposal);
[[nodiscard]] ProposalOption doingNothing(const Proposal& proposal, std::int64_t position,
                                          IdSource& ids);

[[nodiscard]] const Proposal* latestProposal(const JobFile& file);

struct NewVersion {
    Id<Proposal> proposal;
    Change change;
};
// The first proposal: doing nothing, and an option to be written. A later one: the latest with its
// options and lines, not yet sent nor decided on.
[[nodiscard]] NewVersion nextVersion(const JobFile& file, std::optional<Id<Person>> who, Day today,
                                     IdSource& ids);

struct NewOption {
    Id<ProposalOption> option;
    Change change;
};
// Doing nothing, or one to be written, named by the next letter: "B".
[[nodiscard]] NewOption addOption(const JobFile& file, const Proposal& proposal,
                                  bool isDoingNothing, IdSource& ids);
// With its lines.
[[nodiscard]] Change removeOption(const JobFile& file, const ProposalOption& option);

// Sent on this day, with what follows for the job.
[[nodiscard]] Change sendProposal(const JobFile& file, const Proposal& proposal,
                                  std::optional<Id<Person>> who, Instant at, Day today,
                                  IdSource& ids);

// Where the job goes, if anywhere: never back, and not from where it is held or withdrawn.
[[nodiscard]] std::optional<StateMove> moveOnSending(const JobFile& file, const Proposal& proposal,
                                                     std::optional<Id<Person>> who, Instant at);
[[nodiscard]] std::optional<StateMove> moveOnDecision(const JobFile& file, const Decision& decision,
                                                      std::optional<Id<Person>> who, Instant at);

// Adds the writes of such a move; false where the job's states do not allow it.
bool addMove(Change& change, const JobFile& file, const StateMove& move, IdSource& ids);

} // namespace headcap::core
