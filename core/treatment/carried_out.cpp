#include "core/treatment/carried_out.h"

#include <algorithm>

#include "core/treatment/approval.h"
#include "core/treatment/known_places.h"
#include "core/treatment/line_words.h"

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

std::vector<std::string> placesNotDone(const JobFile& file, const ProposalLine& approved) {
    auto open = placesListed(approved.place);
    const auto lines = approvedLines(file);
    bool isBegun = false;
    for (const Step& step : file.steps) {
        if (open.empty() || carriedOut(file, step, lines) != &approved) {
            continue;
        }
        isBegun = true;
        auto said = placesListed(step.place);
        if (said.empty()) {
            said.push_back(step.place);
        }
        const std::size_t before = open.size();
        std::erase_if(open, [&](const std::string& place) {
            return std::ranges::any_of(said, [&](const std::string& one) {
                return line::wordsOf(one) == line::wordsOf(place);
            });
        });
        if (open.size() == before) {
            return {}; // in other words, or said already
        }
    }
    return isBegun ? open : std::vector<std::string>{};
}

} // namespace headcap::core
