// Recipes, those that ship and the workshop's own, in one shape; scaling them; and what lots on the
// shelf a mix may be taken from. Shipped ones in resources/recipes.json, with their sources.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "core/materials/ledger.h"
#include "core/materials/recipe_record.h"
#include "core/materials/strengths.h"

namespace headcap::core {

struct RecipeCardPart {
    std::string what{};                     // in words
    std::string kindKey{};                  // of resources/material_kinds.json
    std::optional<Id<Material>> material{}; // of the workshop's own recipe
    Amount amount{};
};

struct RecipeCard {
    std::string key{}; // of a shipped one, or the record's
    std::string name{};
    std::string makesKind{};
    std::optional<Id<Material>> makes{};
    std::vector<RecipeCardPart> parts{};
    std::optional<Strength> strength{};
    std::optional<Amount> yields{};
    std::string method{};
    std::int64_t keepsDays = 0; // 0: not said
    std::string caution{};
    std::string source{};
    bool isOwn = false;
};

[[nodiscard]] const std::vector<RecipeCard>& shippedRecipes();

// Where such a mix is usually kept: "cold shelf"; with a solvent that takes fire "solvent
// cupboard". Common practice.
[[nodiscard]] std::string usualPlaceOf(const RecipeCard& recipe);

// The workshop's own first, by name; then those that ship.
[[nodiscard]] std::vector<RecipeCard> allRecipes(const std::vector<Recipe>& own,
                                                 const std::vector<RecipePart>& parts);

// By a share: what one of its parts, or the whole, is to be. Each amount to its nearest count.
struct RecipeShare {
    std::int64_t of = 1;
    std::int64_t to = 1;
};
[[nodiscard]] tl::expected<RecipeCard, StrengthProblem> scaled(const RecipeCard& recipe,
                                                               const RecipeShare& share);
// So that it comes to so much; it must say what it yields, in the same unit.
[[nodiscard]] tl::expected<RecipeCard, StrengthProblem> scaledToYield(const RecipeCard& recipe,
                                                                      Amount yield);

// A shipped recipe as records of the workshop's own, to be changed at will.
struct OwnRecipe {
    Recipe recipe;
    std::vector<RecipePart> parts{};
};
[[nodiscard]] OwnRecipe ownCopy(const RecipeCard& card, const Shelf& shelf, IdSource& ids);

// Lots of the shelf a part may be taken from: of its kind, not done with, with something left; fit
// ones first, and of these the one that goes off first.
[[nodiscard]] std::vector<const Lot*> lotsFor(const RecipeCardPart& part, const Shelf& shelf,
                                              Day today);

// The kind a part is of, as the workshop keeps it; nothing where it has none.
[[nodiscard]] const Material* materialOf(const RecipeCardPart& part, const Shelf& shelf);

// The kind of material a recipe makes, as the workshop keeps it; nothing where it has none.
[[nodiscard]] const Material* materialMade(const RecipeCard& recipe, const Shelf& shelf);

// The lot a mix becomes: its origin, recipe, strength, day, mixer and the day it is good until.
[[nodiscard]] Lot lotMixed(const RecipeCard& recipe, const Material& makes,
                           const std::string& number, const Id<Lot>& id, const Hand& hand, Day on);

} // namespace headcap::core
