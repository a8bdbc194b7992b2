#include "core/materials/recipe_mix.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/materials/recipes.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;

class RecipeMixTest : public testing::Test {
protected:
    // Mixes paste of what the shelf has, and puts all that is written on the shelf.
    void mix(const std::string& number) {
        const auto& recipe = shippedRecipes().front();
        RecipeMix mixed{.recipe = recipe, .number = number, .yield = *recipe.yields, .on = kDay};
        for (const RecipeCardPart& part : recipe.parts) {
            const auto lots = lotsFor(part, shelf, kDay);
            mixed.parts.push_back({.amount = part.amount,
                                   .lot = lots.empty() ? std::nullopt : std::optional{lots[0]->id},
                                   .number = number + "-" + part.what});
        }
        const auto change = mixByRecipe(mixed, shelf, {b.anyone(), b.clock.now()}, b.ids);
        ASSERT_TRUE(change);
        for (const Write& write : change->writes) {
            if (const auto* lot = std::get_if<Lot>(&write.record)) {
                shelf.lots.push_back(*lot);
            } else if (const auto* kind = std::get_if<Material>(&write.record)) {
                shelf.materials.push_back(*kind);
            } else if (const auto* entry = std::get_if<LedgerEntry>(&write.record)) {
                shelf.ledger.push_back(*entry);
            } else if (const auto* part = std::get_if<LotPart>(&write.record)) {
                shelf.parts.push_back(*part);
            }
        }
    }
    [[nodiscard]] std::vector<const Lot*> lotsOfKind(const std::string& key) const {
        std::vector<const Lot*> lots;
        for (const Lot& lot : shelf.lots) {
            if (shelf.material(lot.material)->kindKey == key) {
                lots.push_back(&lot);
            }
        }
        return lots;
    }

    static constexpr Day kDay{std::chrono::year{2031} / 3 / 4};
    tests::JobBuilder b;
    Shelf shelf;
};

TEST_F(RecipeMixTest, makesTheKindsAndLotsItLacks) {
    mix("31-001");
    EXPECT_EQ(lotsOfKind("adhesive_dry/wheat_starch").size(), 1U);
    EXPECT_EQ(lotsOfKind("solvent/water").size(), 1U);
    const auto paste = lotsOfKind("adhesive_prepared/wheat_paste");
    ASSERT_EQ(paste.size(), 1U);
    EXPECT_EQ(shelf.balanceOf(paste.front()->id), *shippedRecipes().front().yields);
}

// Nobody buys water by the mix: the workshop's own is one lot, that never holds more than came in.
TEST_F(RecipeMixTest, waterOfOurOwnStaysOneLot) {
    for (const char* number : {"31-001", "31-002", "31-003"}) {
        mix(number);
    }
    const auto water = lotsOfKind("solvent/water");
    ASSERT_EQ(water.size(), 1U);
    EXPECT_EQ(water.front()->supplier, "our own");
    EXPECT_EQ(shelf.balanceOf(water.front()->id)->count, 0);
    EXPECT_EQ(lotsOfKind("adhesive_dry/wheat_starch").size(), 3U) << "what is bought is not alike";
    EXPECT_EQ(lotsOfKind("adhesive_prepared/wheat_paste").size(), 3U);
    EXPECT_EQ(std::ranges::count(shelf.ledger, LedgerKind::received, &LedgerEntry::kind), 6);
}

} // namespace
} // namespace headcap::core
