#include "core/collation/formula.h"

#include <random>
#include <string>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

std::string canonical(const char* formula) {
    return toFormula(readFormula(formula).makeUp);
}

std::string conjugates(const char* formula) {
    const MakeUp makeUp = readFormula(formula).makeUp;
    const std::vector<Leaf> leaves = leavesOf(makeUp);
    std::string out;
    for (std::size_t i = 0; i < leaves.size(); ++i) {
        if (leaves[i].conjugate && *leaves[i].conjugate > i) {
            out += (out.empty() ? "" : " ") + toText(LeafRef(refOf(makeUp, leaves[i]))) + "." +
                   toText(LeafRef(refOf(makeUp, leaves[*leaves[i].conjugate])));
        }
    }
    return out;
}

TEST(Formula, printsInOneFormHoweverItIsWritten) {
    for (const char* written : {"A-D8", "A–D^8", "A-D⁸", "A-D<sup>8</sup>", "A-D(8)", "A⁸-D⁸",
                                "A⁸ B-D⁸", "A⁸ B⁸ C⁸ D⁸", "A-D^8^"}) {
        EXPECT_EQ(canonical(written), "A–D⁸") << written;
    }
    for (const char* written : {"Aa-Cc⁴", "AA-CC⁴", "2A-2C⁴", "Aa–2C⁴"}) {
        EXPECT_EQ(canonical(written), "2A–2C⁴") << written;
    }
    EXPECT_EQ(canonical("pi⁴ a-i⁸ chi²"), "π⁴ a–i⁸ χ²");
    EXPECT_EQ(canonical("^pi^A⁴ [superscript chi]D⁴"), "πA⁴ χD⁴");
    EXPECT_EQ(canonical("[par.]⁴ 2[sec.]⁴ [dagger]² [double dagger]² [fist]²"), "¶⁴ 2§⁴ †² ‡² ☞²");
    EXPECT_EQ(canonical("8vo: A⁸(-A8, A4+1; A2 blank) [B]⁸; A²"),
              "A⁸(A4+1, −A8, A2 blank) [B]⁸; A²");
}

TEST(Formula, givesTheFormatInItsPrefix) {
    EXPECT_EQ(readFormula("8vo: A⁴").format, "8o");
    EXPECT_EQ(readFormula("2°: A⁴").format, "2o");
    EXPECT_EQ(readFormula("Quarto. a-d⁸").format, "4o");
    EXPECT_EQ(readFormula("obl. 4°: A⁴").format, "obl. 4o");
    EXPECT_EQ(readFormula("A⁴").format, "");
}

// Glossary of DCRMR: two leaves that are one piece of paper; leaf i with leaf n + 1 - i.
TEST(Conjugacy, joinsTheHalvesOfAFold) {
    EXPECT_EQ(conjugates("A⁸"), "A1.A8 A2.A7 A3.A6 A4.A5");
    EXPECT_EQ(conjugates("A⁸(-A8)"), "A2.A7 A3.A6 A4.A5"); // A1 is a singleton
    EXPECT_EQ(conjugates("A⁴(±A1)"), "A2.A3");
    EXPECT_EQ(conjugates("A⁴(A2+1.2)"), "A1.A4 A2.A3 A2+1.A2+2");
    EXPECT_EQ(conjugates("A⁴(A2+B²)"), "A1.A4 A2.A3 B1.B2");
    EXPECT_EQ(conjugates("A³"), ""); // which leaf is single the formula does not say
    EXPECT_EQ(conjugates("π1,2"), "");
    EXPECT_EQ(conjugates("χ1.2"), "χ1.χ2");
}

TEST(Tally, countsWhatIsCancelledAndWhatIsLackingApart) {
    const LeafTally counted = tally(readFormula("A⁸(-A8) B⁸(B3 lacking) C⁸(C8 blank)").makeUp);
    EXPECT_EQ(counted.known, 23);
    EXPECT_EQ(counted.lacking, 1);
    EXPECT_EQ(counted.blank, 1);
}

// Found by feeding the reader changed text: a hundred thousand parentheses took it half a minute.
TEST(Formula, isReadAsFarAsAnyStatementGoes) {
    std::string statement = "A-D⁸";
    const std::size_t read = statement.size();
    statement += std::string(20'000, ' ') + "E⁸";
    const FormulaReading reading = readFormula(statement);
    EXPECT_EQ(toFormula(reading.makeUp), "A–D⁸");
    ASSERT_EQ(reading.problems.size(), 1U);
    EXPECT_GT(reading.problems.front().at, read);
    EXPECT_LT(reading.problems.front().at, statement.size() - 3);
}

// Found in the same way: the point before a raised number made a gathering of minus one leaf.
TEST(Formula, takesNoRaisedNumberBehindAPointForAQuiresLeaves) {
    for (const char* written : {"1.⁸", "1.^8", "A⁸ 2.⁴ B⁸"}) {
        const FormulaReading reading = readFormula(written);
        EXPECT_GE(tally(reading.makeUp).known, 0) << written;
        for (const Gathering& gathering : reading.makeUp.gatherings) {
            EXPECT_GE(gathering.called, 0) << written;
        }
    }
}

TEST(Formula, refusesWhatNoBookHas) {
    EXPECT_FALSE(readFormula("A-60Z⁴⁰⁰").problems.empty());
    EXPECT_FALSE(readFormula("1-9999⁸").problems.empty());
    EXPECT_FALSE(readFormula("A⁰").problems.empty());
    EXPECT_FALSE(readFormula("").problems.empty());
    EXPECT_FALSE(readFormula("A⁸ (").problems.empty());
    EXPECT_FALSE(readFormula("C-A⁸").problems.empty());
    EXPECT_FALSE(readFormula("A⁸(-B1)").problems.empty());
}

// Any make-up a formula can hold, drawn at random.
class Drawn {
public:
    explicit Drawn(unsigned seed) : m_random(seed) {}

    MakeUp makeUp() {
        MakeUp out;
        const int runs = upTo(6);
        int place = upTo(4);
        for (int run = 0; run < runs; ++run) {
            const Signature model{SignatureKind::letters, upTo(4) == 1 ? "²" : "", 1,
                                  upTo(2) == 1 ? "A" : "a"};
            const int size = 2 * upTo(6);
            const bool inferred = upTo(5) == 1;
            for (int i = upTo(9); i > 0; --i) {
                Gathering one;
                one.signature = *signatureAt(model, ++place, Alphabet::latin);
                one.signature.inferred = inferred;
                one.called = upTo(20) == 1 ? 0 : size;
                one.part = out.gatherings.empty() ? 0 : out.gatherings.back().part;
                one.part += !out.gatherings.empty() && upTo(25) == 1 ? 1 : 0;
                change(one);
                out.gatherings.push_back(one);
            }
        }
        out.continues = upTo(10) == 1;
        return out;
    }

private:
    int upTo(int most) { return std::uniform_int_distribution<int>(1, most)(m_random); }

    void change(Gathering& one) {
        if (one.called < 4) {
            return;
        }
        if (upTo(8) == 1) {
            one.cancelled = {1, one.called};
        }
        if (upTo(8) == 1) {
            one.lacking = {2};
        }
        if (upTo(8) == 1) {
            one.replaced = {3};
        }
        if (upTo(8) == 1) {
            one.blank = {one.called - 1};
        }
        if (upTo(8) == 1) {
            const int count = upTo(3);
            one.added = {{upTo(one.called), count, count > 1 && upTo(2) == 1}};
        }
    }

    std::mt19937 m_random;
};

class AnyMakeUp : public testing::TestWithParam<unsigned> {};

TEST_P(AnyMakeUp, printsAndReadsBackTheSame) {
    for (unsigned i = 0; i < 200; ++i) {
        const MakeUp makeUp = Drawn(GetParam() * 1000 + i).makeUp();
        const FormulaReading again = readFormula(toFormula(makeUp));
        ASSERT_TRUE(again.problems.empty())
            << toFormula(makeUp) << ": " << again.problems.front().message;
        ASSERT_EQ(again.makeUp, makeUp) << toFormula(makeUp) << "\n" << toFormula(again.makeUp);
    }
}

TEST_P(AnyMakeUp, hasConjugatesInPairsAndGatheringsThatSum) {
    const MakeUp makeUp = Drawn(GetParam()).makeUp();
    const std::vector<Leaf> leaves = leavesOf(makeUp);
    for (std::size_t i = 0; i < leaves.size(); ++i) {
        if (leaves[i].conjugate) {
            EXPECT_NE(*leaves[i].conjugate, i);
            EXPECT_EQ(leaves[*leaves[i].conjugate].conjugate, i);
        }
    }
    std::size_t sum = 0;
    for (const Gathering& gathering : makeUp.gatherings) {
        sum += static_cast<std::size_t>(idealLeaves(gathering).value_or(0));
    }
    EXPECT_EQ(sum, leaves.size());
}

INSTANTIATE_TEST_SUITE_P(Seeds, AnyMakeUp, testing::Range(1U, 11U));

} // namespace
} // namespace headcap::core
