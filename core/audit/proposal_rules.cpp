#include "core/audit/rules.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/audit/facts.h"
#include "core/audit/same_leaves.h"
#include "core/collation/leaf_ref.h"
#include "core/custody/job_states.h"
#include "core/treatment/approval.h"
#include "core/treatment/cost.h"
#include "core/treatment/departures.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

void notApproved(const AuditContext& at, const AuditSink& found) {
    if (facts::isTreated(at.file) && approval(at.file) == nullptr) {
        found(at.file.job, "The book was treated, and the record holds no approval by the owner.");
    }
}

void approvedBy(const AuditContext& at, const AuditSink& found) {
    for (const Decision& decision : at.file.decisions) {
        if (decision.byName.empty()) {
            found(decision, fmt::format("The owner's decision of {} does not say who made it.",
                                        dayText(decision.onDay)));
        }
    }
}

void spoken(const AuditContext& at, const AuditSink& found) {
    const Decision* decision = approval(at.file);
    if (decision != nullptr && decision->means == DecisionMeans::spoken) {
        found(*decision, fmt::format("The approval of {} was spoken: nothing in writing is kept.",
                                     dayText(decision->onDay)));
    }
}

void before(const AuditContext& at, const AuditSink& found) {
    std::optional<Day> first;
    for (const Decision& decision : at.file.decisions) {
        const bool yes = decision.kind == DecisionKind::approved ||
                         decision.kind == DecisionKind::approvedWithLimits;
        if (yes && (!first || decision.onDay < *first)) {
            first = decision.onDay;
        }
    }
    for (const Step* step : facts::standing(at.file)) {
        if (first && isWorkOnTheBook(step->kind) && at.clock.dayOf(step->at) < *first) {
            found(*step,
                  fmt::format("{} was done before the owner approved.", facts::nameOf(*step, at)));
        }
    }
}

template <class Record>
bool speaksOf(const std::vector<Record>& records, const Departure& one, const AuditSink& found) {
    const auto subject = std::ranges::find_if(
        records, [&](const Record& record) { return refOf(record.id) == one.subject; });
    if (subject != records.end()) {
        found(*subject, one.sentence);
    }
    return subject != records.end();
}

void departed(const AuditContext& at, const AuditSink& found, DepartureKind kind) {
    for (const Departure& one : departures(at.file, at.clock)) {
        if (one.kind == kind && one.isOpen()) {
            (void)(speaksOf(at.file.steps, one, found) || speaksOf(at.file.lines, one, found) ||
                   speaksOf(at.file.decisions, one, found));
        }
    }
}

void doneNotApproved(const AuditContext& at, const AuditSink& found) {
    departed(at, found, DepartureKind::doneNotApproved);
}

// Both name leaves, and none in common. Other places are said too freely to be told apart: boards
// are laced on where "spine" was approved.
bool isElsewhere(const std::string& done, const std::string& approved) {
    return parseLeafSet(done) && parseLeafSet(approved) && !mayShareLeaves(done, approved);
}

void doneElsewhere(const AuditContext& at, const AuditSink& found) {
    const auto approved = approvedLines(at.file);
    for (const Step* step : facts::standing(at.file)) {
        std::vector<std::string> places;
        bool isThere = false; // or may be
        for (const ProposalLine* line : approved) {
            if (carriesOut(*step, *line)) {
                isThere = isThere || !isElsewhere(step->place, line->place);
                places.push_back(line->place);
            }
        }
        if (!places.empty() && !isThere) {
            found(*step, fmt::format("{} was done at {}; the owner approved it for {}.",
                                     facts::nameOf(*step, at), step->place, listed(places)));
        }
    }
}

void approvedNotDone(const AuditContext& at, const AuditSink& found) {
    departed(at, found, DepartureKind::approvedNotDone);
}

void overLimit(const AuditContext& at, const AuditSink& found) {
    departed(at, found, DepartureKind::overLimit);
}

// The limit of an approval that is below the price of what it approves: one of them is a mistake.
void limitBelowPrice(const AuditContext& at, const AuditSink& found) {
    const Decision* decision = approval(at.file);
    const auto lines = approvedLines(at.file);
    if (decision == nullptr || !decision->limit || lines.empty()) {
        return;
    }
    const auto proposal = std::ranges::find(at.file.proposals, decision->proposal, &Proposal::id);
    if (proposal == at.file.proposals.end()) {
        return;
    }
    for (const CostTotal& total : costOf(at.file, *proposal, lines.front()->option).totals) {
        if (total.currency == decision->limit->currency &&
            total.gross.minor > decision->limit->minor) {
            found(*decision,
                  fmt::format("What the owner approved comes to {}, above the limit of {} that the "
                              "same decision sets.",
                              toText(total.gross), toText(*decision->limit)));
        }
    }
}

void doNothing(const AuditContext& at, const AuditSink& found) {
    for (const Proposal& proposal : at.file.proposals) {
        const bool has = std::ranges::any_of(at.file.options, [&](const ProposalOption& option) {
            return option.proposal == proposal.id &&
                   std::ranges::find(at.file.lines, option.id, &ProposalLine::option) ==
                       at.file.lines.end();
        });
        if (!has) {
            found(proposal,
                  fmt::format("Proposal {} has no option of doing nothing.", proposal.version));
        }
    }
}

// What the owner decided on must have come to the owner.
void decidedNotSent(const AuditContext& at, const AuditSink& found) {
    for (const Proposal& proposal : at.file.proposals) {
        const bool isDecided = std::ranges::any_of(
            at.file.decisions, [&](const Decision& one) { return one.proposal == proposal.id; });
        if (isDecided && !proposal.sentOn) {
            found(proposal, fmt::format("Proposal {} has its answer, and the record does not say "
                                        "that it was sent.",
                                        proposal.version));
        }
    }
}

void irreversibleNotAgreed(const AuditContext& at, const AuditSink& found) {
    const Decision* decision = approval(at.file);
    if (decision == nullptr) {
        return;
    }
    const bool agreed = std::ranges::any_of(at.file.options, [&](const ProposalOption& option) {
        return option.proposal == decision->proposal && !option.irreversible.empty();
    });
    if (agreed) {
        return;
    }
    for (const Step* step : facts::standing(at.file)) {
        if (step->reversibility == Reversibility::no && step->kind != StepKind::incident) {
            found(*step, fmt::format("{} can't be undone, and the proposal did not say so.",
                                     facts::nameOf(*step, at)));
        }
    }
}

constexpr auto kMust = AuditSeverity::mustSettle;
constexpr auto kWorth = AuditSeverity::worthKnowing;
constexpr std::string_view kApproval = "AIC Commentary 26; Icon Standards 2.1–2.3";
constexpr std::array kRules{
    AuditRule{"approval", Page::proposal, kMust, kApproval, notApproved},
    AuditRule{"approval_by_whom", Page::proposal, kMust, kApproval, approvedBy},
    AuditRule{"approval_spoken", Page::proposal, kWorth, kApproval, spoken},
    AuditRule{"approval_before_work", Page::bench, kWorth, kApproval, before},
    AuditRule{"done_not_approved", Page::bench, kMust, kApproval, doneNotApproved},
    AuditRule{"done_elsewhere", Page::bench, kWorth, kApproval, doneElsewhere},
    AuditRule{"approved_not_done", Page::proposal, kWorth, kApproval, approvedNotDone},
    AuditRule{"over_limit", Page::proposal, kWorth, kApproval, overLimit},
    AuditRule{"limit_below_price", Page::proposal, kWorth, kApproval, limitBelowPrice},
    AuditRule{"decided_not_sent", Page::proposal, kWorth, kApproval, decidedNotSent},
    AuditRule{"do_nothing_offered", Page::proposal, kWorth, kApproval, doNothing},
    AuditRule{"irreversible_agreed", Page::proposal, kWorth, kApproval, irreversibleNotAgreed},
};

} // namespace

std::span<const AuditRule> proposalRules() {
    return kRules;
}

} // namespace headcap::core
