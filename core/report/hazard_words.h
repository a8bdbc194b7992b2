// The hazards of a book, as every paper says them that goes to its owner or lies beside wet hands.
#pragma once

#include "core/record/job_file.h"
#include "core/report/document.h"

namespace headcap::core::report {

enum class HazardReader { owner, bench };

// "Arsenical green, suspected", with the place and the caution, each as what must catch the eye; of
// what is truly cleared nothing.
void addHazards(Section& section, const JobFile& file, HazardReader reader);

} // namespace headcap::core::report
