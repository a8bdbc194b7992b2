// A recipe booked as a lot, in one change, with what the shelf lacks for it: a kind the workshop
// does not keep yet is begun from the vocabulary, and of a part of which there is no lot, as much
// as is taken is received with the mix, under a number of its own.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/materials/recipes.h"

namespace headcap::core {

struct PartTaken {
    Amount amount;
    std::optional<Id<Lot>> lot; // nothing: received with the mix
    std::string number{};       // of the lot that is then received
    std::string why{};          // a lot that is not fit was used all the same
};

struct RecipeMix {
    RecipeCard recipe;
    std::vector<PartTaken> parts; // in the order of the recipe's
    std::string number;
    Amount yield;
    std::optional<Day> goodUntil{};
    std::string keptAt{};
    Day on;
};

[[nodiscard]] tl::expected<Change, LedgerProblem> mixByRecipe(const RecipeMix& mix, Shelf shelf,
                                                              const Hand& hand, IdSource& ids);

} // namespace headcap::core
