// A version of the proposal as a letter to the owner, on the workshop's letterhead: the options
// side by side, what can't be undone, what each costs with its tax, what is not included, dates,
// and a place to answer. A version not sent yet is marked as a draft.
#pragma once

#include "core/record/job_file.h"
#include "core/report/document.h"
#include "core/values/time.h"

namespace headcap::core {

[[nodiscard]] Document composeProposal(const JobFile& file, const Proposal& proposal, Day today);

} // namespace headcap::core
