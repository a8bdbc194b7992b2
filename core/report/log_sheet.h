// The bench log of one job on paper: every step in its order, struck ones too, and the hours of
// each person. For whoever takes the work over, and for the file beside the book.
#pragma once

#include "core/record/job_file.h"
#include "core/report/document.h"

namespace headcap::core {

[[nodiscard]] Document logSheet(const JobFile& file, const Clock& clock);

} // namespace headcap::core
