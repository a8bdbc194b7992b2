#include "core/treatment/carried_out.h"

#include <algorithm>

#include "core/treatment/approval.h"
#include "core/treatment/known_places.h"

namespace headcap::core {

const ProposalLine* carriedOut(const JobFile& file, const Step& step,
                               const std::vector<const ProposalLine*>& lines) {
    std::vector<const ProposalLine*> candidates;
    std::ranges::copy_if(lines, std::back_inserter(candidates),
                         [&](const ProposalLine* line) { return carriesOut(step, *line); });
    if (candidates.size() > 1 && !step.place.empty()) {
        const auto byPlace = lineAt(knownPlaces(file), step.technique, step.place);
        const auto found = std::ranges::find_if(
            candidates, [&](const ProposalLine* line) { return line->id == byPlace; });
        if (found != candidates.end()) {
            return *found;
        }
    }
    return candidates.empty() ? nullptr : candidates.front();
}

} // namespace headcap::core
