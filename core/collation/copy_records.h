// The records of one volume's collation, out of the file of its job.
#pragma once

#include <optional>

#include "core/collation/copy_statement.h"
#include "core/record/job_file.h"

namespace headcap::core {

[[nodiscard]] CopyRecords copyOf(const JobFile& file, const std::optional<Id<Item>>& part,
                                 const Collation& collation);

} // namespace headcap::core
