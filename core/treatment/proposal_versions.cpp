#include "core/treatment/proposal_versions.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/treatment/totals.h"

namespace headcap::core {
namespace {

bool isOpenTo(JobState from, JobState to) {
    const bool isAside = from == JobState::onHold || from == JobState::withdrawn;
    return !isAside && !hasReached(from, to);
}

void copyOptions(NewVersion& made, const JobFile& file, const Proposal& from, const Proposal& to,
                 IdSource& ids) {
    for (const ProposalOption* option : optionsOf(file, from.id)) {
        ProposalOption copy = *option;
        copy.id = ids.next<ProposalOption>();
        copy.proposal = to.id;
        made.change.add(copy);
        for (const ProposalLine* line : linesOf(file, option->id)) {
            ProposalLine copied = *line;
            copied.id = ids.next<ProposalLine>();
            copied.option = copy.id;
            made.change.add(copied);
        }
    }
}

} // namespace

bool offersDoingNothing(const JobFile& file, const Id<Proposal>& proposal) {
    return std::ranges::any_of(optionsOf(file, proposal), [&](const ProposalOption* option) {
        return linesOf(file, option->id).empty();
    });
}

ProposalOption doingNothing(const Proposal& proposal, std::int64_t position, IdSource& ids) {
    return {.id = ids.next<ProposalOption>(),
            .job = proposal.job,
            .proposal = proposal.id,
            .position = position,
            .name = "Do nothing"};
}

const Proposal* latestProposal(const JobFile& file) {
    const auto latest = std::ranges::max_element(file.proposals, {}, &Proposal::version);
    return latest == file.proposals.end() ? nullptr : &*latest;
}

NewVersion nextVersion(const JobFile& file, std::optional<Id<Person>> who, Day today,
                       IdSource& ids) {
    const Proposal* before = latestProposal(file);
    Proposal proposal{.id = ids.next<Proposal>(),
                      .job = file.job.id,
                      .version = before == nullptr ? 1 : before->version + 1,
                      .madeOn = today,
                      .who = who};
    if (before != nullptr) {
        proposal.aim = before->aim;
        proposal.notIncluded = before->notIncluded;
        proposal.risks = before->risks;
        proposal.deposit = before->deposit;
        proposal.insuredValue = before->insuredValue;
        proposal.startOn = before->startOn;
        proposal.readyOn = before->readyOn;
        proposal.taxPpm = before->taxPpm;
        proposal.taxPerLine = before->taxPerLine;
    } else if (file.workshop) {
        proposal.taxPpm = file.workshop->taxPpm;
        proposal.taxPerLine = file.workshop->taxPerLine;
    }
    NewVersion made{proposal.id,
                    {.sentence = fmt::format("Proposal {} begun", proposal.version), .who = who}};
    made.change.add(proposal);
    if (before != nullptr) {
        copyOptions(made, file, *before, proposal, ids);
    }
    if (before == nullptr || !offersDoingNothing(file, before->id)) {
        made.change.add(doingNothing(proposal, before == nullptr ? 1 : 0, ids));
    }
    if (before == nullptr) {
        made.change.add(ProposalOption{.id = ids.next<ProposalOption>(),
                                       .job = file.job.id,
                                       .proposal = proposal.id,
                                       .position = 2,
                                       .name = "A"});
    }
    return made;
}

NewOption addOption(const JobFile& file, const Proposal& proposal, bool isDoingNothing,
                    IdSource& ids) {
    const auto all = optionsOf(file, proposal.id);
    ProposalOption made = doingNothing(proposal, all.empty() ? 1 : all.back()->position + 1, ids);
    if (!isDoingNothing) {
        char letter = 'A';
        const auto isTaken = [&](const ProposalOption* option) {
            return option->name.starts_with(letter) &&
                   (option->name.size() == 1 || option->name[1] == ':' || option->name[1] == ' ');
        };
        while (letter < 'Z' && std::ranges::any_of(all, isTaken)) {
            ++letter;
        }
        made.name = std::string(1, letter);
    }
    Change change{.sentence = "Option added: " + made.name};
    change.add(made);
    return {made.id, std::move(change)};
}

Change removeOption(const JobFile& file, const ProposalOption& option) {
    Change change{.sentence = "Option removed: " + option.name};
    for (const ProposalLine* line : linesOf(file, option.id)) {
        change.remove(*line, file.revisionOf(refOf(line->id)));
    }
    change.remove(option, file.revisionOf(refOf(option.id)));
    return change;
}

Change sendProposal(const JobFile& file, const Proposal& proposal, std::optional<Id<Person>> who,
                    Instant at, Day today, IdSource& ids) {
    Proposal sent = proposal;
    sent.sentOn = today;
    Change change{.sentence = fmt::format("Proposal {} sent to the owner", sent.version),
                  .who = who};
    change.update(sent, file.revisionOf(refOf(sent.id)));
    if (const auto move = moveOnSending(file, sent, who, at)) {
        addMove(change, file, *move, ids);
    }
    return change;
}

std::optional<StateMove> moveOnSending(const JobFile& file, const Proposal& proposal,
                                       std::optional<Id<Person>> who, Instant at) {
    if (!isOpenTo(file.job.state, JobState::proposed)) {
        return std::nullopt;
    }
    return StateMove{JobState::proposed, who, at,
                     fmt::format("proposal {} sent to the owner", proposal.version)};
}

std::optional<StateMove> moveOnDecision(const JobFile& file, const Decision& decision,
                                        std::optional<Id<Person>> who, Instant at) {
    const bool isApproval = decision.kind == DecisionKind::approved ||
                            decision.kind == DecisionKind::approvedWithLimits;
    if (!isApproval || !isOpenTo(file.job.state, JobState::approved)) {
        return std::nullopt;
    }
    const auto proposal = std::ranges::find(file.proposals, decision.proposal, &Proposal::id);
    const std::int64_t version = proposal == file.proposals.end() ? 0 : proposal->version;
    return StateMove{JobState::approved, who, at,
                     fmt::format("proposal {} approved{}", version,
                                 decision.byName.empty() ? "" : " by " + decision.byName)};
}

bool addMove(Change& change, const JobFile& file, const StateMove& move, IdSource& ids) {
    auto moved = changeState(file.job, file.revisionOf(refOf(file.job.id)), move, ids);
    if (!moved) {
        return false;
    }
    change.writes.insert(change.writes.end(), std::make_move_iterator(moved->writes.begin()),
                         std::make_move_iterator(moved->writes.end()));
    return true;
}

} // namespace headcap::core
