#include "core/materials/mix_text.h"

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

class MixText : public testing::Test {
protected:
    MixText() {
        m_b.material("starch", MaterialClass::adhesiveDry, Unit::gram);
        m_shelf.materials = m_b.file.materials;
        for (const char* number : {"26-001", "26-026"}) {
            m_shelf.lots.push_back(Lot{.id = m_b.ids.next<Lot>(),
                                       .number = number,
                                       .material = m_shelf.materials[0].id,
                                       .savedIn = std::nullopt,
                                       .mixedBy = std::nullopt,
                                       .parent = std::nullopt});
        }
    }
    tests::JobBuilder m_b;
    Shelf m_shelf;
};

TEST_F(MixText, readsLotsWithTheirAmounts) {
    // Wheat starch paste of the Library of Congress, 57 g to 400 ml (TRADE B).
    for (const char* text : {"26-001 57 g, 26-026 400 ml", "26-001 57g; 26-026 400 ml;",
                             "  26-001\t57 g,26-026 400 ml"}) {
        const auto parts = parseMixParts(text, m_shelf);
        ASSERT_TRUE(parts) << text;
        ASSERT_EQ(parts->size(), 2U) << text;
        EXPECT_EQ((*parts)[0].source, m_shelf.lots[0].id);
        EXPECT_EQ((*parts)[0].amount, Amount::of(Mass::grams(57)));
        EXPECT_EQ((*parts)[1].amount, Amount::of(Volume::millilitres(400)));
    }
}

TEST_F(MixText, takesACommaInANumberForADecimal) {
    const auto parts = parseMixParts("26-001 12,5 g, 26-026 1 g", m_shelf);
    ASSERT_TRUE(parts);
    EXPECT_EQ((*parts)[0].amount, Amount::of(Mass::milligrams(12'500)));
}

TEST_F(MixText, saysWhichPartCannotBeRead) {
    EXPECT_EQ(parseMixParts(" ; ", m_shelf).error(), (MixTextError{MixTextProblem::empty, 0}));
    EXPECT_EQ(parseMixParts("26-001 57 g, 26-900 1 g", m_shelf).error(),
              (MixTextError{MixTextProblem::lotUnknown, 12}));
    EXPECT_EQ(parseMixParts("26-001 a cup", m_shelf).error(),
              (MixTextError{MixTextProblem::amountUnread, 0}));
}

} // namespace
} // namespace headcap::core
