// What lots a mix may be taken from, and the lot that it becomes.
#include <algorithm>
#include <cctype>
#include <set>
#include <tuple>
#include <utility>

#include "core/materials/material_kinds.h"
#include "core/materials/recipes.h"
#include "core/materials/shelf_life.h"
#include "core/values/small_letters.h"
#include "core/values/unit_text.h"

namespace headcap::core {
namespace {

constexpr Day kNever{std::chrono::year::max(), std::chrono::month{12}, std::chrono::day{31}};

// In small letters, without signs.
std::set<std::string> wordsIn(const std::string& text) {
    std::set<std::string> words;
    std::string word;
    for (const char c : text + ' ') {
        const auto byte = static_cast<unsigned char>(c);
        if (byte >= 0x80 || std::isalnum(byte) != 0) {
            word += smallLetter(c);
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
