// What goes into a mix and is not in it when it is made: water that boils away or stays behind.
#pragma once

#include <optional>

#include "core/materials/recipes.h"

namespace headcap::core {

// Of grams and water, at 1 g to the ml; nothing where none is lost, where another liquid is in it,
// or where what it comes to is not weighed.
[[nodiscard]] std::optional<Amount> boiledAway(const RecipeCard& recipe);

} // namespace headcap::core
