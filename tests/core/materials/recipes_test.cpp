#include "core/materials/recipes.h"

#include <algorithm>
#include <set>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/materials/material_kinds.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;

TEST(Recipes, areFromKindsThatAreKnownAndSayWhereTheyComeFrom) {
    std::set<std::string> keys;
    for (const RecipeCard& recipe : shippedRecipes()) {
        EXPECT_TRUE(keys.insert(recipe.key).second) << recipe.key;
        EXPECT_NE(materialKindNamed(recipe.makesKind), nullptr) << recipe.key;
        EXPECT_FALSE(recipe.source.empty()) << recipe.key;
        EXPECT_GT(recipe.keepsDays, 0) << recipe.key;
        EXPECT_GE(recipe.parts.size(), 2U) << recipe.key;
        for (const RecipeCardPart& part : recipe.parts) {
            EXPECT_TRUE(part.kindKey.empty() || materialKindNamed(part.kindKey) != nullptr)
                << recipe.key << " " << part.kindKey;
            EXPECT_FALSE(part.what.empty()) << recipe.key;
        }
    }
}

// The strength a recipe claims is what its own amounts come to, grams in ml of the solvent.
TEST(Recipes, sayTheStrengthTheyMake) {
    for (const RecipeCard& recipe : shippedRecipes()) {
        const Amount solute = recipe.parts[0].amount;
        const Amount solvent = recipe.parts[1].amount;
        ASSERT_EQ(solute.unit, Unit::gram) << recipe.key;
        ASSERT_EQ(solvent.unit, Unit::millilitre) << recipe.key;
        ASSERT_TRUE(recipe.strength) << recipe.key;
        // µg in µl: a thousandth is a thousand parts of a million.
        EXPECT_EQ(solute.count * 1'000 / solvent.count / 100,
                  recipe.strength->partsPerMillion / 100)
            << recipe.key;
    }
}

// A mix never weighs more than what went into it (water and ethanol are not heavier than 1 g/ml).
TEST(Recipes, yieldNoMoreThanGoesIn) {
    for (const RecipeCard& recipe : shippedRecipes()) {
        std::int64_t in = 0;
        for (const RecipeCardPart& part : recipe.parts) {
            in += part.amount.unit == Unit::gram ? part.amount.count : part.amount.count * 1'000;
        }
        const Amount yields = *recipe.yields;
        EXPECT_LE(yields.unit == Unit::gram ? yields.count : yields.count * 1'000, in)
            << recipe.key;
    }
}

TEST(Recipes, withWhatBurnsSayWhoToAsk) {
    for (const RecipeCard& recipe : shippedRecipes()) {
        for (const RecipeCardPart& part : recipe.parts) {
            if (part.kindKey == "solvent/ethanol") {
                EXPECT_NE(recipe.caution.find("local rules"), std::string::npos) << recipe.key;
            }
        }
    }
}

TEST(Recipes, scaleEveryPartAlike) {
    const RecipeCard& paste = shippedRecipes().front();
    const auto half = scaledToYield(paste, Amount::of(Mass::grams(225)));
    ASSERT_TRUE(half);
    EXPECT_EQ(half->parts[0].amount, Amount::of(Mass::milligrams(28'500)));
    EXPECT_EQ(half->parts[1].amount, Amount::of(Volume::millilitres(200)));
    EXPECT_EQ(half->yields, Amount::of(Mass::grams(225)));
    EXPECT_EQ(half->strength, paste.strength);
    using Problem = StrengthProblem;
    EXPECT_EQ(scaledToYield(paste, Amount::of(Volume::millilitres(225))).error(),
              Problem::otherMeasure);
    EXPECT_EQ(scaledToYield(paste, Amount::of(Mass::grams(0))).error(), Problem::notAbove);
    EXPECT_EQ(scaledToYield(paste, Amount{1, Unit::gram}).error(), Problem::tooLittle);
    RecipeCard strong = paste;
    strong.yields = Amount{1, Unit::gram};
    EXPECT_EQ(scaledToYield(strong, Amount{INT64_MAX, Unit::gram}).error(), Problem::tooMuch);
}

class RecipesOnTheShelf : public testing::Test {
protected:
    RecipesOnTheShelf() {
        add("31-001", "wheat starch", 500).goodUntil.reset();
        add("31-002", "wheat starch", 500).goodUntil = day(2031, 3, 1); // overdue
        add("31-003", "wheat starch", 500).goodUntil = day(2031, 6, 1);
        add("31-004", "wheat starch", 500).finished = true;
        add("31-005", "methylcellulose", 500);
        paste = &b.material("Wheat starch paste", MaterialClass::adhesivePrepared, Unit::gram);
        paste->kindKey = "adhesive_prepared/wheat_paste";
    }
    Lot& add(const char* number, const char* kind, std::int64_t grams) {
        return b.lot(number, kind, Amount::of(Mass::grams(grams)));
    }
    Shelf shelf() { return shelfOf(b.file); }

    tests::JobBuilder b;
    Material* paste = nullptr;
    const RecipeCard& card = shippedRecipes().front();
};

TEST_F(RecipesOnTheShelf, fitLotsComeFirstAndOfTheseWhatGoesOffFirst) {
    const Shelf shelf = this->shelf();
    std::vector<std::string> numbers;
    for (const Lot* lot : lotsFor(card.parts.front(), shelf, day(2031, 4, 2))) {
        numbers.push_back(lot->number);
    }
    EXPECT_EQ(numbers, (std::vector<std::string>{"31-003", "31-001", "31-002"}));
}

// A workshop names its kinds in its own order of words; none of these was begun from the
// vocabulary.
TEST(RecipeParts, areKnownOnTheShelfByTheWordsOfTheWorkshop) {
    Shelf shelf;
    const auto kind = [&](std::uint8_t n, const char* name, MaterialClass is, Unit unit) {
        shelf.materials.push_back({.id = Id<Material>{*Uuid::fromText(
                                       fmt::format("0196b6a0-0000-7000-8000-0000000000{:02x}", n))},
                                   .name = name,
                                   .kind = is,
                                   .unit = unit});
    };
    using C = MaterialClass;
    kind(1, "Hydroxypropylcellulose in ethanol", C::consolidant, Unit::millilitre);
    kind(2, "Ethanol, 96 %", C::solvent, Unit::millilitre);
    kind(3, "Wheat starch paste", C::adhesivePrepared, Unit::gram);
    kind(4, "Water, deionised", C::solvent, Unit::millilitre);
    kind(5, "Hydroxypropylcellulose, dry", C::adhesiveDry, Unit::gram);
    kind(6, "Ethanol, anhydrous", C::solvent, Unit::millilitre);
    kind(7, "Gelatine", C::adhesivePrepared, Unit::gram);
    const auto found = [&](const char* key, const char* what) {
        const Material* one = materialOf({.what = what, .kindKey = key}, shelf);
        return one == nullptr ? std::string{} : one->name;
    };
    EXPECT_EQ(found("solvent/water", "deionised water"), "Water, deionised");
    EXPECT_EQ(found("solvent/ethanol", "anhydrous ethanol"), "Ethanol, anhydrous");
    EXPECT_EQ(found("", "hydroxypropylcellulose"), "Hydroxypropylcellulose, dry");
    EXPECT_EQ(found("adhesive_dry/wheat_starch", "wheat starch"), ""); // paste is no starch
    EXPECT_EQ(found("", "gelatine"), "");                              // nor its solution
}

TEST_F(RecipesOnTheShelf, aMixIsALotThatSaysHowItWasMade) {
    const Shelf shelf = this->shelf();
    const Material* makes = materialMade(card, shelf);
    ASSERT_NE(makes, nullptr);
    EXPECT_EQ(makes->name, "Wheat starch paste");
    const Lot lot = lotMixed(card, *makes, "31-006", b.ids.next<Lot>(), {b.anyone(), b.clock.now()},
                             day(2031, 4, 2));
    EXPECT_EQ(lot.origin, LotOrigin::mixed);
    EXPECT_EQ(lot.goodUntil, day(2031, 4, 16));
    EXPECT_EQ(lot.strength, parseStrength("14.25 % w/v").value());
    EXPECT_NE(lot.recipe.find("Library of Congress"), std::string::npos);
}

// What takes fire is not kept among the pastes.
TEST(Recipes, withASolventThatTakesFireAreKeptInItsCupboard) {
    std::set<bool> seen;
    for (const RecipeCard& recipe : shippedRecipes()) {
        const bool hasAlcohol = std::ranges::any_of(recipe.parts, [](const RecipeCardPart& part) {
            return part.kindKey.ends_with("propanol") || part.kindKey.ends_with("ethanol");
        });
        seen.insert(hasAlcohol);
        EXPECT_EQ(usualPlaceOf(recipe) == "solvent cupboard", hasAlcohol) << recipe.name;
    }
    EXPECT_EQ(seen.size(), 2U);
}

TEST_F(RecipesOnTheShelf, aShippedRecipeBecomesTheWorkshopsOwn) {
    const OwnRecipe own = ownCopy(card, shelf(), b.ids);
    const auto all = allRecipes({own.recipe}, own.parts);
    ASSERT_TRUE(all.front().isOwn);
    EXPECT_EQ(all.front().name, card.name);
    ASSERT_EQ(all.front().parts.size(), card.parts.size());
    EXPECT_EQ(all.front().parts[0].amount, card.parts[0].amount);
    EXPECT_TRUE(all.front().parts[0].material); // the workshop's wheat starch
    EXPECT_EQ(all.front().source, card.source);
    EXPECT_EQ(all.size(), shippedRecipes().size() + 1);
}

} // namespace
} // namespace headcap::core
