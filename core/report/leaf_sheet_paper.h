// The leaf-by-leaf sheet of work on paper: a row a leaf, a box a piece of work, to be ticked in the
// wet room and put into the record afterwards. What is done already is ticked.
#pragma once

#include "core/record/job_file.h"
#include "core/report/document.h"

namespace headcap::core {

[[nodiscard]] Document leafSheetPaper(const JobFile& file, const Clock& clock);

} // namespace headcap::core
