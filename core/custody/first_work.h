// Work on the book brings its job to the bench: the first work on an approved one, and further work
// on one that was passed or reported, which is to be checked and reported again.
#pragma once

#include "core/record/change.h"
#include "core/record/job_file.h"

namespace headcap::core {

// Not where the work is older than the passing, and was only logged late.
[[nodiscard]] bool bringsToTheBench(const JobFile& file, StepKind kind, Instant begun);

// Adds the change of state to the entry that logs the step; nothing where the job stays where it
// is.
void bringToTheBench(Change& change, const JobFile& file, const Step& step, IdSource& ids);

} // namespace headcap::core
