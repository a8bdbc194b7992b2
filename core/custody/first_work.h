// Work that begins on an approved book brings its job to the bench.
#pragma once

#include "core/record/change.h"
#include "core/record/job_file.h"

namespace headcap::core {

// Adds the change of state to the entry that logs the step; nothing where the job is elsewhere, or
// the step is no work on the book.
void bringToTheBench(Change& change, const JobFile& file, const Step& step, IdSource& ids);

} // namespace headcap::core
