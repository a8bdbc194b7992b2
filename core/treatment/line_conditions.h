// Under what conditions, in a line of the log: "21 °C", "55 % RH", "2 % w/v", "under 6 kg", "grain
// along the spine". Inside of the line's reader.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/treatment/line_words.h"
#include "core/treatment/step.h"

namespace headcap::core::line {

struct Conditions {
    std::optional<std::int64_t> temperatureTenthsC{};
    std::optional<std::int64_t> humidityPercent{};
    std::string concentration{};                // "2 % w/v"
    std::string pressure{};                     // "6 kg"
    GrainAtSpine grain = GrainAtSpine::notSaid; // "grain along the spine"
};

// Takes the first of each; a further one stays in the description.
[[nodiscard]] Conditions takeConditions(Words& words);

} // namespace headcap::core::line
