#include "core/materials/recipes.h"

#include <limits>

#include "core/values/wide.h"

namespace headcap::core {
namespace {

std::optional<Amount> scaledAmount(Amount amount, const RecipeShare& share) {
    const Wide count = nearest(static_cast<Wide>(amount.count) * share.to, share.of);
    if (count <= 0 || count > std::numeric_limits<std::int64_t>::max()) {
        return std::nullopt;
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
    const auto put = [&](Amount& amount) {
        const auto by = scaledAmount(amount, share);
        amount = by.value_or(Amount{});
        return by.has_value();
    };
    bool isAll = !card.yields || put(*card.yields);
    for (RecipeCardPart& part : card.parts) {
        isAll = put(part.amount) && isAll;
    }
    if (!isAll) {
        return tl::unexpected(StrengthProblem::tooMuch);
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
