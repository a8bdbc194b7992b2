// Which work answers which finding of condition, so that the advice does not repeat as a warning
// what was made good. Which that is, the techniques' own file says.
#pragma once

#include "core/record/job_file.h"

namespace headcap::core::report {

// Some step of the log, not struck, worked on what the finding is about.
[[nodiscard]] bool isWorkedOn(const JobFile& file, const Finding& finding);

} // namespace headcap::core::report
