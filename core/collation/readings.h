// Which reading of an open formula the extent confirms. Internal to the collation answer.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/collation/expansion.h"
#include "core/collation/extent.h"

namespace headcap::core {

struct ConfirmedReading {
    TermReading reading;
    int extentReading = 0;
    std::vector<std::string> notes; // what is assumed, a sentence each; empty for the plain reading
};

// How the formula reads by itself.
[[nodiscard]] TermReading plainReading(const Terms& terms);

// `leaves` has the totals the extent can be read to, in order of preference. The plain reading
// where it agrees or nothing agrees.
[[nodiscard]] ConfirmedReading confirm(const Terms& terms, const std::vector<int>& leaves);

} // namespace headcap::core
