#include "core/materials/recipes.h"

#include <limits>

#include "core/values/wide.h"

namespace headcap::core {
namespace {

tl::expected<Amount, StrengthProblem> scaledAmount(Amount amount, const RecipeShare& share) {
    const Wide count = nearest(static_cast<Wide>(amount.count) * share.to, share.of);
    if (count > std::numeric_limits<std::int64_t>::max()) {
        return tl::unexpected(StrengthProblem::tooMuch);
    }
    if (count <= 0) {
        return tl::unexpected(StrengthProblem::tooLittle);
    }
    return Amount{static_cast<std::int64_t>(count), amount.unit};
}

} // namespace

tl::expected<RecipeCard, StrengthProblem> scaled(const RecipeCard& recipe,
                                                 const RecipeShare& share) {
    if (share.of <= 0 || share.to <= 0) {
        return tl::unexpected(StrengthProblem::notAbove);
    }
    RecipeCard card = recipe;
    std::vector<Amount*> amounts;
    for (RecipeCardPart& part : card.parts) {
        amounts.push_back(&part.amount);
    }
    if (card.yields) {
        amounts.push_back(&*card.yields);
    }
    for (Amount* amount : amounts) {
        const auto by = scaledAmount(*amount, share);
        if (!by) {
            return tl::unexpected(by.error());
        }
        *amount = *by;
    }
    return card;
}

tl::expected<RecipeCard, StrengthProblem> scaledToYield(const RecipeCard& recipe, Amount yield) {
    if (!recipe.yields || recipe.yields->unit != yield.unit) {
        return tl::unexpected(StrengthProblem::otherMeasure);
    }
    return scaled(recipe, {.of = recipe.yields->count, .to = yield.count});
}

} // namespace headcap::core
