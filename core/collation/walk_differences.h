// Where the walks of two people through one copy do not agree, in words: what each says of the
// leaf.
#pragma once

#include <string>
#include <vector>

#include "core/collation/copy_statement.h"

namespace headcap::core {

// "K5: as expected for Orrin Vale; misnumbered 97 for 79 for Ada Finch." In the order of the
// leaves, the walks by their beginning; of walks by one make-up only.
[[nodiscard]] std::vector<std::string> walkDifferences(const CopyRecords& copy);

} // namespace headcap::core
