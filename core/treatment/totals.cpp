#include "core/treatment/totals.h"

#include <algorithm>

#include "core/treatment/carried_out.h"

namespace headcap::core {

std::vector<const ProposalOption*> optionsOf(const JobFile& file, const Id<Proposal>& proposal) {
    std::vector<const ProposalOption*> options;
    for (const ProposalOption& option : file.options) {
        if (option.proposal == proposal) {
            options.push_back(&option);
        }
    }
    std::ranges::stable_sort(options, {}, &ProposalOption::position);
    return options;
}

std::vector<const ProposalLine*> linesOf(const JobFile& file, const Id<ProposalOption>& option) {
    std::vector<const ProposalLine*> lines;
    for (const ProposalLine& line : file.lines) {
        if (line.option == option) {
            lines.push_back(&line);
        }
    }
    std::ranges::stable_sort(lines, {}, &ProposalLine::position);
    return lines;
}

Minutes minutesOf(const JobFile& file, const Id<ProposalOption>& option) {
    Minutes minutes{0};
    for (const ProposalLine* line : linesOf(file, option)) {
        minutes += line->minutes;
    }
    return minutes;
}

std::vector<const ProposalLine*> irreversibleLines(const JobFile& file,
                                                   const Id<ProposalOption>& option) {
    auto lines = linesOf(file, option);
    std::erase_if(lines, [&](const ProposalLine* line) {
        const Technique* technique = file.techniques.named(line->technique);
        return technique == nullptr || technique->reversibility != Reversibility::no;
    });
    return lines;
}

LineWork workedOn(const JobFile& file, const ProposalLine& line) {
    const auto siblings = linesOf(file, line.option);
    LineWork work;
    for (const Step& step : file.steps) {
        const ProposalLine* carried = carriedOut(file, step, siblings);
        if (carried != nullptr && carried->id == line.id) {
            work.minutes += step.minutes;
            ++work.steps;
        }
    }
    return work;
}

} // namespace headcap::core
