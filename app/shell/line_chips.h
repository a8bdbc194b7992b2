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

// "09:20", of minutes from midnight.
[[nodiscard]] QString clockText(core::Minutes sinceMidnight);
[[nodiscard]] std::vector<LineChip> chipsOf(const LineSaid& said);

// Why there is no such place in the book, where that is without a doubt.
[[nodiscard]] QString absentPlace(const core::StepLine& read, const core::JobFile* file);

// The words of the line that look like the number of a lot, and are none.
[[nodiscard]] QStringList unknownLots(const QString& line, const core::StepLine& read);

} // namespace headcap::app
