#include "core/treatment/work_at_hand.h"

#include <algorithm>

#include "core/treatment/approval.h"
#include "core/treatment/clocks.h"
#include "core/treatment/totals.h"

namespace headcap::core {
namespace {

using Lines = std::vector<const ProposalLine*>;

Lines::const_iterator firstNotBegun(const JobFile& file, const Lines& lines) {
    return std::ranges::find_if(
        lines, [&](const ProposalLine* line) { return workedOn(file, *line).steps == 0; });
}

// Where the lines begin that are shown: full places are turned over as a page is.
std::size_t firstShown(const JobFile& file, const Lines& lines, std::size_t places) {
    const auto next = firstNotBegun(file, lines);
    const auto at =
        next == lines.end() ? std::size_t{0} : static_cast<std::size_t>(next - lines.begin());
    return places == 0 ? 0 : at / places * places;
}

std::vector<const BenchClock*> clocksOf(const JobFile& file) {
    auto clocks = runningClocks(file);
    const auto waiting = clocksToLog(file);
    clocks.insert(clocks.end(), waiting.begin(), waiting.end());
    return clocks;
}

} // namespace

WorksAtHand worksAtHand(const JobFile& file, std::size_t places) {
    WorksAtHand works;
    const Lines lines = approvedLines(file);
    const std::size_t first = firstShown(file, lines, places);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const BenchClock* clock = runningFor(file, lines[i]->id);
        if (i >= first && i < first + places) {
            works.shown.push_back({lines[i], clock});
        } else if (clock == nullptr) {
            works.rest.push_back(lines[i]);
        }
    }
    for (const BenchClock* clock : clocksOf(file)) {
        if (std::ranges::find(works.shown, clock, &WorkAtHand::clock) == works.shown.end()) {
            works.shown.push_back({nullptr, clock});
        }
    }
    return works;
}

WorksAtHand workAtHand(const JobFile& file) {
    WorksAtHand works;
    const Lines lines = approvedLines(file);
    for (const BenchClock* clock : clocksOf(file)) {
        works.shown.push_back({nullptr, clock});
    }
    const auto next = firstNotBegun(file, lines);
    for (auto line = lines.begin(); line != lines.end(); ++line) {
        if (runningFor(file, (*line)->id) != nullptr) {
            continue;
        }
        if (works.shown.empty() && (line == next || next == lines.end())) {
            works.shown.push_back({*line, nullptr});
        } else {
            works.rest.push_back(*line);
        }
    }
    return works;
}

} // namespace headcap::core
