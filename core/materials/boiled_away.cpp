#include "core/materials/boiled_away.h"

namespace headcap::core {

std::optional<Amount> boiledAway(const RecipeCard& recipe) {
    constexpr std::int64_t kMicrogramsInMicrolitre = 1'000;
    if (!recipe.yields || recipe.yields->unit != Unit::gram) {
        return std::nullopt;
    }
    std::int64_t micrograms = 0;
    for (const RecipeCardPart& part : recipe.parts) {
        const bool isWater =
            part.kindKey == "solvent/water" || part.what.find("water") != std::string::npos;
        if (part.amount.unit == Unit::gram) {
            micrograms += part.amount.count;
        } else if (part.amount.unit == Unit::millilitre && isWater) {
            micrograms += part.amount.count * kMicrogramsInMicrolitre;
        } else {
            return std::nullopt;
        }
    }
    const std::int64_t lost = micrograms - recipe.yields->count;
    return lost > 0 ? std::optional{Amount{lost, Unit::gram}} : std::nullopt;
}

} // namespace headcap::core
