// Which properties are asked of which kinds; common practice, but for the permanence of paper and
// board, which ISO 9706 and ISO 16245 are about.
#include "core/materials/kind_properties.h"

#include <gtest/gtest.h>

#include "core/materials/material_kinds.h"

namespace headcap::core {
namespace {

TEST(KindProperties, areThoseOfTheTrade) {
    using C = MaterialClass;
    using P = KindProperty;
    EXPECT_TRUE(matters(P::weight, C::tissue));
    EXPECT_TRUE(matters(P::permanence, C::board));
    EXPECT_TRUE(matters(P::tannage, C::leather));
    EXPECT_TRUE(matters(P::solids, C::adhesivePrepared));
    EXPECT_TRUE(matters(P::density, C::solvent));
    EXPECT_FALSE(matters(P::tannage, C::paper));
    EXPECT_FALSE(matters(P::permanence, C::leather));
    EXPECT_FALSE(matters(P::weight, C::adhesivePrepared));
}

// What the shipped vocabulary says keeps for so many days is asked for its date.
TEST(KindProperties, whatGoesOffInTheVocabularyIsAskedForItsDate) {
    for (const MaterialKind& kind : materialKinds()) {
        if (kind.shelfLifeDays > 0) {
            EXPECT_TRUE(matters(KindProperty::shelfLife, kind.kind)) << kind.name;
        }
    }
}

// What the vocabulary filled in follows a corrected name; what somebody typed stays.
TEST(MaterialNamed, followsTheVocabularyUntilItIsTouched) {
    const Id<Material> id{*Uuid::fromText("0196b6a0-0000-7000-8000-000000000001")};
    const MaterialKind& first = materialKinds().front();
    const MaterialKind& other = materialKinds().back();
    ASSERT_NE(first.kind, other.kind);
    Material blank{.id = id};
    blank.name = first.name;
    const Material filled = materialNamed({.id = id}, blank);
    EXPECT_EQ(filled, materialFrom(first, id));

    Material renamed = filled;
    renamed.name = other.name;
    EXPECT_EQ(materialNamed(filled, renamed), materialFrom(other, id));

    Material own = filled;
    own.note = "bought in rolls";
    Material ownRenamed = own;
    ownRenamed.name = other.name;
    EXPECT_EQ(materialNamed(own, ownRenamed), ownRenamed);

    Material weighed{.id = id};
    weighed.name = first.name + ", 9 g/m²"; // begins with the vocabulary's name
    const Material known = materialNamed({.id = id}, weighed);
    EXPECT_EQ(known.name, weighed.name);
    EXPECT_EQ(known.kindKey, first.key);
    EXPECT_EQ(known.unit, first.unit);

    Material unknown = filled;
    unknown.name = "a paper of our own";
    EXPECT_EQ(materialNamed(filled, unknown), unknown);
}

} // namespace
} // namespace headcap::core
