#include "core/treatment/step_conditions.h"

#include <algorithm>
#include <array>

namespace headcap::core {
namespace {

// Used in a strength that somebody chose.
constexpr auto kDiluted = std::to_array<std::string_view>(
    {"solution", "gelatine", "methylcellulose", "hydroxypropylcellulose", "isinglass", "funori",
     "consolidant"});

bool dries(const Technique& technique) {
    return technique.sets > Minutes{0};
}

} // namespace

bool asksForTemperature(const Technique& technique) {
    return technique.wets || technique.key == "freezing";
}

bool asksForHumidity(const Technique& technique) {
    return technique.wets || dries(technique);
}

bool asksForStrength(const Technique& technique) {
    return std::ranges::any_of(technique.materials, [](const std::string& material) {
        return std::ranges::any_of(kDiluted, [&](std::string_view diluted) {
            return material.find(diluted) != std::string::npos;
        });
    });
}

bool asksForPressure(const Technique& technique) {
    return dries(technique);
}

} // namespace headcap::core
