// What lies at hand at the bench as large buttons: the approved lines, each in the place it has in
// the proposal, whatever has been done of it, so that a hand finds again what it used before; and
// the clocks. What finds no place stands in a list.
#pragma once

#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

struct WorkAtHand {
    const ProposalLine* line = nullptr; // null: the clock is of no approved line
    const BenchClock* clock = nullptr;  // runs, or waits to be logged; null: the line waits
};

struct WorksAtHand {
    std::vector<WorkAtHand> shown;
    std::vector<const ProposalLine*> rest; // in the proposal's order
};

// Lines fill `places` in the proposal's order, the first ones first, the next ones when all of
// these are begun. A clock that runs for one of them stands in its place; every other clock is
// added behind, so that it can always be stopped.
[[nodiscard]] WorksAtHand worksAtHand(const JobFile& file, std::size_t places);

// The one thing to be shown where there is room for one: a clock, or the first line not begun.
[[nodiscard]] WorksAtHand workAtHand(const JobFile& file);

} // namespace headcap::core
