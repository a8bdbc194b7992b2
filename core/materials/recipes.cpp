#include "core/materials/recipes.h"

#include <algorithm>
#include <cctype>
#include <limits>
#include <set>
#include <tuple>
#include <utility>

#include <nlohmann/json.hpp>

#include "core/materials/material_kinds.h"
#include "core/materials/shelf_life.h"
#include "core/values/contract.h"
#include "core/values/english.h"
#include "core/values/unit_text.h"
#include "core/values/wide.h"
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

constexpr Day kNever{std::chrono::year::max(), std::chrono::month{12}, std::chrono::day{31}};

std::optional<Amount> scaledAmount(Amount amount, const RecipeShare& share) {
    const Wide count = nearest(static_cast<Wide>(amount.count) * share.to, share.of);
    if (count <= 0 || count > std::numeric_limits<std::int64_t>::max()) {
        return std::nullopt;
    }
    return Amount{static_cast<std::int64_t>(count), amount.unit};
}

// In small letters, without signs.
std::set<std::string> wordsIn(const std::string& text) {
    std::set<std::string> words;
    std::string word;
    for (const char c : text + ' ') {
        const auto byte = static_cast<unsigned char>(c);
        if (byte >= 0x80 || std::isalnum(byte) != 0) {
            word += static_cast<char>(byte < 0x80 ? std::tolower(byte) : byte);
        } else if (!word.empty()) {
            words.insert(std::exchange(word, {}));
        }
    }
    return words;
}

// "Ethanol, anhydrous" is the anhydrous ethanol that a recipe asks for; ethanol of 96 % is not. Of
// what the vocabulary does not know, a solution of it is not the thing itself.
bool isCalledSo(const Material& material, const MaterialKind* kind, const std::string& what) {
    using C = MaterialClass;
    const bool isSuch =
        kind != nullptr ? material.kind == kind->kind
                        : material.kind != C::adhesivePrepared && material.kind != C::consolidant;
    const auto asked = wordsIn(what);
    const auto called = wordsIn(material.name);
    return isSuch && !asked.empty() && std::ranges::includes(called, asked);
}

// Begun from the kind of the vocabulary, or called as it is, or as the recipe calls it.
bool isOfKind(const Material& material, const std::string& kindKey, const std::string& what) {
    const MaterialKind* kind = materialKindNamed(kindKey);
    return (!kindKey.empty() && material.kindKey == kindKey) ||
           (kind != nullptr &&
            (sameLetters(material.name, kind->name) || sameLetters(material.name, what))) ||
           isCalledSo(material, kind, what);
}

} // namespace

std::string usualPlaceOf(const RecipeCard& recipe) {
    const bool takesFire = std::ranges::any_of(recipe.parts, [](const RecipeCardPart& part) {
        return part.kindKey == "solvent/ethanol" || part.kindKey == "solvent/isopropanol";
    });
    return takesFire ? "solvent cupboard" : "cold shelf";
}

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

const Material* materialOf(const RecipeCardPart& part, const Shelf& shelf) {
    if (part.material) {
        return shelf.material(*part.material);
    }
    const auto found = std::ranges::find_if(shelf.materials, [&](const Material& material) {
        return isOfKind(material, part.kindKey, part.what);
    });
    return found == shelf.materials.end() ? nullptr : &*found;
}

std::vector<const Lot*> lotsFor(const RecipeCardPart& part, const Shelf& shelf, Day today) {
    struct Offered {
        const Lot* lot;
        bool isOverdue;
        Day until;
    };
    std::vector<Offered> offered;
    for (const Lot& lot : shelf.lots) {
        const Material* kind = shelf.material(lot.material);
        const bool isIt =
            kind != nullptr &&
            (part.material ? kind->id == *part.material : isOfKind(*kind, part.kindKey, part.what));
        const auto balance = isIt && !lot.finished ? shelf.balanceOf(lot.id) : std::nullopt;
        if (balance && balance->count > 0) {
            offered.push_back({&lot, ageOf(lot, kind, today) == LotAge::overdue,
                               goodUntilOf(lot, kind).value_or(kNever)});
        }
    }
    std::ranges::stable_sort(offered, [](const Offered& a, const Offered& b) {
        return std::tie(a.isOverdue, a.until, a.lot->number) <
               std::tie(b.isOverdue, b.until, b.lot->number);
    });
    std::vector<const Lot*> lots;
    for (const Offered& one : offered) {
        lots.push_back(one.lot);
    }
    return lots;
}

const Material* materialMade(const RecipeCard& recipe, const Shelf& shelf) {
    if (recipe.makes) {
        return shelf.material(*recipe.makes);
    }
    const auto found = std::ranges::find_if(shelf.materials, [&](const Material& material) {
        return isOfKind(material, recipe.makesKind, recipe.name);
    });
    return found == shelf.materials.end() ? nullptr : &*found;
}

Lot lotMixed(const RecipeCard& recipe, const Material& makes, const std::string& number,
             const Id<Lot>& id, const Hand& hand, Day on) {
    Lot lot{.id = id,
            .number = number,
            .material = makes.id,
            .origin = LotOrigin::mixed,
            .savedIn = std::nullopt,
            .mixedOn = on,
            .mixedBy = hand.who,
            .recipe = recipe.name,
            .strength = recipe.strength,
            .parent = std::nullopt};
    if (!recipe.source.empty() && !recipe.isOwn) {
        lot.recipe += " (" + recipe.source + ")";
    }
    if (recipe.keepsDays > 0) {
        lot.goodUntil = Day{std::chrono::sys_days{on} + std::chrono::days{recipe.keepsDays}};
    }
    return lot;
}

} // namespace headcap::core
