// What has been understood of a line of the bench log, as small labelled parts, in the order in
// which one asks: what, where, with what, how long, by whom. Words left over are a part too.
#pragma once

#include <optional>
#include <vector>

#include "app/shell/chip_row.h"
#include "core/materials/fitness.h"
#include "core/treatment/step_line.h"
#include "core/treatment/techniques_in_force.h"

namespace headcap::app {

struct LineSaid {
    const QString& line;
    const core::StepLine& read;
    const core::LineContext& context;
    const core::TechniquesInForce& techniques;
    const core::JobFile* file; // null: none is open
    std::optional<core::Id<core::Person>> who;
    std::vector<std::vector<core::FitnessPoint>> fitness; // of each use
    core::Instant end{};                                  // of the work
};

[[nodiscard]] std::vector<LineChip> chipsOf(const LineSaid& said);

} // namespace headcap::app
