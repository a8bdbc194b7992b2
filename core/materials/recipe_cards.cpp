// Recipes that ship and the workshop's own, in one shape.
#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/materials/recipes.h"
#include "core/values/contract.h"
#include "core/values/unit_text.h"
#include "core/vocabulary/vocabulary_file.h"

namespace headcap::core {
namespace {

template <class Value, class Parse>
Value parsed(const nlohmann::json& entry, std::string_view name, Parse parse) {
    const auto value = parse(vocabulary::text(entry, name));
    HEADCAP_CONTRACT(value.has_value());
    return *value;
}

std::string joined(const std::vector<std::string>& texts) {
    std::string all;
    for (const std::string& one : texts) {
        all += (all.empty() ? "" : "; ") + one;
    }
    return all;
}

std::vector<RecipeCard> readAll() {
    using namespace vocabulary;
    std::vector<RecipeCard> all;
    const auto json = file("recipes.json");
    for (const auto& entry : member(json, "recipes")) {
        RecipeCard card{.key = text(entry, "key"),
                        .name = text(entry, "name"),
                        .makesKind = text(entry, "makes"),
                        .strength = parsed<Strength>(entry, "strength", parseStrength),
                        .yields = parsed<Amount>(entry, "yields", parseAmount),
                        .method = text(entry, "method"),
                        .keepsDays = numberOr(entry, "keeps_days"),
                        .caution = textOr(entry, "caution"),
                        .source = joined(texts(entry, "sources"))};
        for (const auto& part : member(entry, "parts")) {
            card.parts.push_back({.what = text(part, "what"),
                                  .kindKey = textOr(part, "kind"),
                                  .amount = parsed<Amount>(part, "amount", parseAmount)});
        }
        all.push_back(std::move(card));
    }
    return all;
}

} // namespace

const std::vector<RecipeCard>& shippedRecipes() {
    static const std::vector<RecipeCard> kAll = readAll();
    return kAll;
}

std::vector<RecipeCard> allRecipes(const std::vector<Recipe>& own,
                                   const std::vector<RecipePart>& parts) {
    std::vector<RecipeCard> all;
    for (const Recipe& recipe : own) {
        std::vector<RecipePart> its;
        std::ranges::copy_if(parts, std::back_inserter(its),
                             [&](const RecipePart& part) { return part.recipe == recipe.id; });
        std::ranges::stable_sort(its, {}, &RecipePart::position);
        RecipeCard card{.key = recipe.id.text(),
                        .name = recipe.name,
                        .makes = recipe.makes,
                        .strength = recipe.strength,
                        .yields = recipe.yields,
                        .method = recipe.method,
                        .keepsDays = recipe.keepsDays,
                        .caution = recipe.caution,
                        .source = recipe.source,
                        .isOwn = true};
        for (const RecipePart& part : its) {
            card.parts.push_back(
                {.what = part.what, .material = part.material, .amount = part.amount});
        }
        all.push_back(std::move(card));
    }
    std::ranges::stable_sort(all, {}, &RecipeCard::name);
    all.insert(all.end(), shippedRecipes().begin(), shippedRecipes().end());
    return all;
}

OwnRecipe ownCopy(const RecipeCard& card, const Shelf& shelf, IdSource& ids) {
    const Material* makes = materialMade(card, shelf);
    OwnRecipe own{.recipe = {.id = ids.next<Recipe>(),
                             .name = card.name,
                             .makes = makes == nullptr ? std::nullopt : std::optional{makes->id},
                             .strength = card.strength,
                             .yields = card.yields,
                             .method = card.method,
                             .keepsDays = card.keepsDays,
                             .caution = card.caution,
                             .source = card.source}};
    for (const RecipeCardPart& part : card.parts) {
        const Material* kind = materialOf(part, shelf);
        own.parts.push_back({.id = ids.next<RecipePart>(),
                             .recipe = own.recipe.id,
                             .position = static_cast<std::int64_t>(own.parts.size()) + 1,
                             .material = kind == nullptr ? part.material : std::optional{kind->id},
                             .what = part.what,
                             .amount = part.amount});
    }
    return own;
}

} // namespace headcap::core
