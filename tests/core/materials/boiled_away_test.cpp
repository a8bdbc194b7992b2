#include "core/materials/boiled_away.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

RecipeCard paste(Amount yields) {
    return {.parts = {{.what = "wheat starch", .amount = Amount::of(Mass::grams(57))},
                      {.kindKey = "solvent/water", .amount = Amount::of(Volume::millilitres(400))}},
            .yields = yields};
}

// 57 g to 400 ml is the Library of Congress recipe of 2015; 457 g go in.
TEST(BoiledAway, isWhatGoesInAndIsNotInIt) {
    EXPECT_EQ(boiledAway(paste(Amount::of(Mass::grams(430)))), Amount::of(Mass::grams(27)));
    EXPECT_EQ(boiledAway(paste(Amount::of(Mass::grams(450)))), Amount::of(Mass::grams(7)));
    EXPECT_FALSE(boiledAway(paste(Amount::of(Mass::grams(457)))));
    EXPECT_FALSE(boiledAway(paste(Amount::of(Mass::grams(500)))));
    EXPECT_FALSE(boiledAway(paste(Amount::of(Volume::millilitres(300))))); // not weighed
}

// Nobody boils ethanol.
TEST(BoiledAway, isSaidOfWaterAlone) {
    for (const RecipeCard& recipe : shippedRecipes()) {
        const bool hasOther = std::ranges::any_of(recipe.parts, [](const RecipeCardPart& part) {
            return part.amount.unit == Unit::millilitre && part.kindKey != "solvent/water";
        });
        EXPECT_FALSE(hasOther && boiledAway(recipe)) << recipe.key;
    }
}

// Twice the paste loses twice the water.
TEST(BoiledAway, scalesWithTheMix) {
    const auto twice =
        scaledToYield(paste(Amount::of(Mass::grams(450))), Amount::of(Mass::grams(900)));
    ASSERT_TRUE(twice);
    EXPECT_EQ(boiledAway(*twice), Amount::of(Mass::grams(14)));
}

} // namespace
} // namespace headcap::core
