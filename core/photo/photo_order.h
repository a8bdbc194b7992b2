// Which part of the work a photograph belongs to when it is taken in, and the order within it.
#pragma once

#include <vector>

#include "core/custody/job.h"
#include "core/photo/photograph.h"

namespace headcap::core {

// What is taken while a job is in a state: before the work, during it, or after it.
[[nodiscard]] PhotoRole usualRole(JobState state);

// Behind the last of its role.
[[nodiscard]] std::int64_t nextPosition(const std::vector<Photograph>& all, PhotoRole role);

// Moves one so many places among those of its role, not past its ends; gives those whose
// position changes. `all` in order, as a job's file has them.
[[nodiscard]] std::vector<Photograph> moved(const std::vector<Photograph>& all,
                                            const Id<Photograph>& one, int by);

} // namespace headcap::core
