// The next number a lot may have.
#pragma once

#include <optional>
#include <string>

#include "core/record/stores.h"

namespace headcap::core {

// After the greatest of the year, "26-015"; nothing once the year's are used up. Throws StoreError.
[[nodiscard]] std::optional<std::string> freeLotNumber(const RecordStore& store, Day today);

} // namespace headcap::core
