#include "core/treatment/line_fitness.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using Rule = FitnessRule;
using tests::day;

// A line that is proposed: new endpapers from a paper of which one lot is on the shelf.
class LineFitness : public testing::Test {
protected:
    LineFitness() : line(b.line(b.option(b.proposal(), "A"), "endpapers")) {
        b.material("text paper", MaterialClass::paper, Unit::sheet);
        b.lot("31-001", "text paper", Amount::sheets(10)).grain = Grain::alongHeight;
        b.material("wheat starch paste", MaterialClass::adhesivePrepared, Unit::gram);
        b.lot("31-002", "wheat starch paste", Amount::of(Mass::grams(60))).goodUntil =
            day(2031, 4, 1);
    }
    std::vector<std::pair<std::string, Rule>> said(const char* materials) {
        line.materials = materials;
        std::vector<std::pair<std::string, Rule>> found;
        for (const ProposedFitness& one :
             fitnessOf(line, shelfOf(b.file), b.file, day(2031, 4, 2))) {
            EXPECT_FALSE(one.point.sentence.empty());
            found.emplace_back(one.name, one.point.rule);
        }
        return found;
    }
    using Said = std::vector<std::pair<std::string, Rule>>;

    tests::JobBuilder b;
    ProposalLine& line;
};

// Grain runs parallel to the spine (Cockerell 1901; Etherington & Roberts).
TEST_F(LineFitness, aSheetThatFollowsTheSpineIsAskedForItsGrain) {
    EXPECT_EQ(said("31-001"), (Said{{"31-001", Rule::grainUnsaid}}));
    EXPECT_EQ(said("text paper 31-001, grain along the spine"), Said{});
    EXPECT_EQ(said("31-001, grain across"), (Said{{"31-001", Rule::grainAcross}}));
}

TEST_F(LineFitness, itIsAskedBeforeALotIsChosen) {
    EXPECT_EQ(said("Text paper, wheat starch paste"), (Said{{"text paper", Rule::grainUnsaid}}));
    EXPECT_EQ(said("text paper, grain along"), Said{});
    EXPECT_EQ(said("a paper to be bought"), Said{}) << "no kind that is known";
}

TEST_F(LineFitness, handmadePaperWithoutGrainIsNotAsked) {
    std::ranges::find(b.file.lots, "31-001", &Lot::number)->grain = Grain::none;
    EXPECT_EQ(said("31-001"), Said{});
}

TEST_F(LineFitness, workThatDoesNotFollowTheSpineIsNotAsked) {
    line.technique = "surface_cleaning";
    EXPECT_EQ(said("31-001"), Said{});
}

TEST_F(LineFitness, aLotPastItsDateSaysSo) {
    EXPECT_EQ(said("paste 31-002 20 g"), (Said{{"31-002", Rule::pastDate}}));
    EXPECT_EQ(said(""), Said{});
}

} // namespace
} // namespace headcap::core
