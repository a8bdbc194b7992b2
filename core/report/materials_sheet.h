// The materials of a job as a sheet of their own, to be printed: every use with its lot and origin,
// amount, step, place, way of removal and cost, the pieces cut for it, and the sum against the
// estimate.
#pragma once

#include "core/materials/cutting_record.h"
#include "core/record/job_file.h"
#include "core/report/document.h"

namespace headcap::core {

[[nodiscard]] Document materialsSheet(const JobFile& file, const std::vector<CutPart>& cutParts,
                                      const Clock& clock);

} // namespace headcap::core
