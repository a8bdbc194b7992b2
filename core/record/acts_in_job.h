// What was lately done in one job, of what was done in the workshop.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/record/job_file.h"
#include "core/record/stores.h"

namespace headcap::core {

// Of the newest entries, newest first, so many at most of this job and its book: without changes of
// schema, which are nobody's acts, and without what was taken back, which its taking back says.
[[nodiscard]] std::vector<JournalEntry> actsIn(const JobFile& file,
                                               std::vector<JournalEntry> newest, std::size_t most);

// The one job an act is of; nothing where it is of several, or of none.
[[nodiscard]] std::optional<Id<Job>> onlyJobOf(const JournalEntry& act);

} // namespace headcap::core
