// Which steps of the work are told as repairs in disclosure B, for the composer and for the check.
#pragma once

#include "core/record/job_file.h"

namespace headcap::core::report {

// A step that stands and added something to the book. The printing of a facsimile leaf is no repair
// of its own: it is told with its leaf in disclosure A, its paper and ink in C.
[[nodiscard]] bool isRepair(const JobFile& file, const Step& step);

} // namespace headcap::core::report
