// The conditions of a step that its technique asks for: air and warmth where moisture comes in or
// something dries, the strength of what is used in a bath or as a consolidant, the load of what is
// pressed. Common practice.
#pragma once

#include "core/treatment/techniques.h"

namespace headcap::core {

using AsksFor = bool (*)(const Technique& technique);

[[nodiscard]] bool asksForTemperature(const Technique& technique);
[[nodiscard]] bool asksForHumidity(const Technique& technique);
[[nodiscard]] bool asksForStrength(const Technique& technique);
[[nodiscard]] bool asksForPressure(const Technique& technique);

} // namespace headcap::core
