#include "core/materials/substances.h"

#include <gtest/gtest.h>

#include "core/materials/material_kinds.h"

namespace headcap::core {
namespace {

// Formulae as any table of chemistry writes them.
TEST(Substances, tellsAFormulaFromASignature) {
    for (const char* formula : {"H2O2", "Ca(OH)2", "CaCO3", "NaBH4", "Mg(HCO3)2", "K2CO3", "CO2"}) {
        EXPECT_TRUE(isFormula(formula)) << formula;
    }
    for (const char* other : {"H2", "HH2", "C4", "Aa4", "2C4r", "K5", "NO", "(2)", "", "A4", "SS2",
                              "π2", "26-014", "EVA"}) {
        EXPECT_FALSE(isFormula(other)) << other;
    }
}

TEST(Substances, knowsTheLongestName) {
    EXPECT_EQ(substanceAt({"kozo", "tissue", "5"}, 0, "kozo"), 2U);
    EXPECT_EQ(substanceAt({"sodium", "borohydride"}, 0, "sodium"), 2U);
    EXPECT_EQ(substanceAt({"sodium", "borohydride"}, 1, "borohydride"), 1U);
    EXPECT_EQ(substanceAt({"the", "joint"}, 0, "the"), 0U);
}

TEST(Substances, isOfTheVocabularysKind) {
    const auto eva = substanceAsMaterial("EVA 20 %");
    ASSERT_TRUE(eva);
    EXPECT_EQ(eva->kindKey, "adhesive_prepared/pva");
    EXPECT_EQ(substanceAsMaterial("2% isinglass")->kind, MaterialClass::adhesivePrepared);
    EXPECT_FALSE(substanceAsMaterial("H2O2"));
    EXPECT_FALSE(substanceAsMaterial("a grey cloud"));
}

} // namespace
} // namespace headcap::core
