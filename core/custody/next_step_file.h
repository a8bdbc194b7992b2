// What the next thing to do is worked out from, and no more: the worklist asks it of every job in
// the house. A test holds that nextStep says the same of it as of the whole file.
#pragma once

#include "core/record/job_file.h"

namespace headcap::core {

// Nothing where there is no such job.
[[nodiscard]] std::optional<JobFile> fileForNextStep(const RecordStore& store, const Id<Job>& id,
                                                     const TechniquesInForce& techniques);

} // namespace headcap::core
