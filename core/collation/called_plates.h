// The plates a book calls for, as the record has them: each with where it belongs, checked against
// the make-up.
#pragma once

#include <string>
#include <vector>

#include "core/collation/plates.h"
#include "core/collation/walk_record.h"

namespace headcap::core {

// In the order they are called for.
[[nodiscard]] PlateCheck checkPlates(const LaidBook& book, const std::vector<CalledPlate>& plates);

// What is not as it should be with one of them; empty: nothing.
[[nodiscard]] std::string remarkOn(const PlateCheck& check, const std::vector<CalledPlate>& plates,
                                   std::size_t plate);

} // namespace headcap::core
