// On what the state of a hazard rests. A negative look is no clearance: only an analysis clears
// what the eye can't see.
#pragma once

#include <string>

#include "core/custody/custody.h"

namespace headcap::core {

// Called cleared, where the method names nothing but looking, and looking is not enough.
[[nodiscard]] bool isClearedByLookAlone(const Hazard& hazard);

// Whether its caution still stands, at the bench and in every paper: all but what is truly cleared.
[[nodiscard]] bool stillWarns(const Hazard& hazard);

// "suspected", "cleared"; of what was cleared by a look, what the look can say: "not seen active on
// 31 August 2026".
[[nodiscard]] std::string standingOf(const Hazard& hazard);

} // namespace headcap::core
