// The workshop's letterhead, as every paper of it carries it.
#pragma once

#include "core/record/job_file.h"
#include "core/report/document.h"

namespace headcap::core::report {

[[nodiscard]] Letterhead letterheadOf(const JobFile& file);

} // namespace headcap::core::report
