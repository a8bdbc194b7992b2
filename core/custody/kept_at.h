// Where a book is kept is a field of its job, and every change of it is a move on record, with who
// moved it: whichever of the two is written, the other follows.
#pragma once

#include <optional>

#include "core/record/job_file.h"

namespace headcap::core {

// The move behind a change of the job; nothing where the place stayed.
[[nodiscard]] std::optional<CustodyMove> moveBehind(const Job& before, const Job& after,
                                                    std::optional<Id<Person>> who, Instant now,
                                                    IdSource& ids);

// The job as a move leaves it, noted now or mended: nothing where it stands already so, or where
// the book was moved again since.
[[nodiscard]] std::optional<Job> jobAfterMove(const JobFile& file, const CustodyMove& move);

} // namespace headcap::core
