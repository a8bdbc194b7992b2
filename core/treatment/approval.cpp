#include "core/treatment/approval.h"

#include <algorithm>

#include "core/treatment/known_places.h"
#include "core/treatment/work_title.h"

namespace headcap::core {
namespace {

bool isApproval(const Decision& decision) {
    return decision.kind == DecisionKind::approved ||
           decision.kind == DecisionKind::approvedWithLimits;
}

std::vector<const ProposalOption*> optionsWithLines(const JobFile& file,
                                                    const Id<Proposal>& proposal) {
    std::vector<const ProposalOption*> options;
    for (const ProposalOption& option : file.options) {
        if (option.proposal == proposal &&
            std::ranges::find(file.lines, option.id, &ProposalLine::option) != file.lines.end()) {
            options.push_back(&option);
        }
    }
    return options;
}

// At the place of another line with its technique.
bool isOfAnother(const std::vector<KnownPlace>& places, const Step& step,
                 const ProposalLine& line) {
    const auto at = lineAt(places, step.technique, step.place);
    return at && *at != line.id;
}

} // namespace

const Decision* latestDecision(const JobFile& file, const Id<Proposal>& proposal) {
    const Decision* latest = nullptr;
    for (const Decision& decision : file.decisions) {
        if (decision.proposal == proposal &&
            (latest == nullptr || decision.onDay >= latest->onDay)) {
            latest = &decision;
        }
    }
    return latest;
}

const Decision* approval(const JobFile& file) {
    const Decision* inForce = nullptr;
    std::int64_t version = -1;
    for (const Proposal& proposal : file.proposals) {
        const Decision* decision = latestDecision(file, proposal.id);
        if (decision != nullptr && proposal.version > version) {
            version = proposal.version;
            inForce = isApproval(*decision) ? decision : nullptr;
        }
    }
    return inForce;
}

std::vector<const ProposalLine*> approvedLines(const JobFile& file) {
    std::vector<const ProposalLine*> lines;
    const Decision* decision = approval(file);
    if (decision == nullptr) {
        return lines;
    }
    std::optional<Id<ProposalOption>> option = decision->option;
    if (!option) {
        const auto options = optionsWithLines(file, decision->proposal);
        if (options.size() != 1) {
            return lines;
        }
        option = options.front()->id;
    }
    for (const ProposalLine& line : file.lines) {
        if (line.option == *option) {
            lines.push_back(&line);
        }
    }
    std::ranges::stable_sort(lines, {}, &ProposalLine::position);
    return lines;
}

std::string lineTitle(const ProposalLine& line, const TechniquesInForce& techniques) {
    std::string title = techniques.nameOf(line.technique);
    if (title.empty()) {
        title = line.description;
    }
    return workTitle(title, line.place);
}

bool carriesOut(const Step& step, const ProposalLine& line) {
    if (step.struckAt) {
        return false;
    }
    return step.line ? *step.line == line.id
                     : !line.technique.empty() && step.technique == line.technique;
}

std::vector<const ProposalLine*> openLines(const JobFile& file) {
    const auto all = approvedLines(file);
    std::vector<KnownPlace> places;
    auto lines = all;
    std::erase_if(lines, [&](const ProposalLine* line) {
        const auto same = std::ranges::count(all, line->technique, &ProposalLine::technique);
        if (same > 1 && places.empty()) {
            places = knownPlaces(file);
        }
        return std::ranges::any_of(file.steps, [&](const Step& step) {
            return carriesOut(step, *line) &&
                   (same == 1 || step.line || !isOfAnother(places, step, *line));
        });
    });
    return lines;
}

bool isWorkOnTheBook(StepKind kind) {
    return kind == StepKind::treatment || kind == StepKind::removal || kind == StepKind::uncovering;
}

std::vector<const Step*> unapprovedSteps(const JobFile& file) {
    std::vector<const Step*> steps;
    const auto lines = approvedLines(file);
    if (lines.empty()) {
        return steps;
    }
    for (const Step& step : file.steps) {
        if (isWorkOnTheBook(step.kind) && !step.struckAt &&
            std::ranges::none_of(
                lines, [&](const ProposalLine* line) { return carriesOut(step, *line); })) {
            steps.push_back(&step);
        }
    }
    return steps;
}

} // namespace headcap::core
