// The answer of `headcap trace` as JSON.
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "core/materials/trace.h"

namespace headcap::core {

// Lots by number; `through` is every lot on the way, none where the traced lot itself was used.
[[nodiscard]] nlohmann::json traceJson(const LotTrace& trace);

} // namespace headcap::core
