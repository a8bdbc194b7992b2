// The catalogue of actions as one looks a key up in it.
#pragma once

#include <vector>

#include "app/session/actions.h"

namespace headcap::app {

// Those of a place: single keys, then Ctrl with letters and figures in their order, then what is
// pressed with more.
[[nodiscard]] std::vector<const ActionEntry*> actionsByKey(Place place);

} // namespace headcap::app
