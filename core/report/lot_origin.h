// Where a lot comes from, in words: bought from whom, saved from what, mixed from which lots, cut
// off which. For lists and for the report.
#pragma once

#include <string>

#include "core/record/job_file.h"

namespace headcap::core::report {

[[nodiscard]] std::string originText(const JobFile& file, const Lot& lot);

} // namespace headcap::core::report
