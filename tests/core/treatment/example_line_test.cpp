#include "core/treatment/example_line.h"

#include <gtest/gtest.h>

#include "core/treatment/step_line.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::JobBuilder;

class ExampleLineTest : public testing::Test {
protected:
    ProposalLine& approved(const std::string& technique, const std::string& place) {
        const Proposal& proposal = b.proposal();
        const ProposalOption& option = b.option(proposal, "A");
        b.decision(proposal, DecisionKind::approved).option = option.id;
        ProposalLine& line = b.line(option, technique);
        line.place = place;
        return line;
    }
    StepLine read() const {
        const Shelf shelf = shelfOf(b.file);
        return readStepLine(exampleLine(b.file, shelf), {.shelf = shelf,
                                                         .people = b.file.people,
                                                         .techniques = b.file.techniques.offered(),
                                                         .places = knownPlaces(b.file)});
    }

    JobBuilder b;
};

TEST_F(ExampleLineTest, namesAnApprovedLineItsPlaceAndALotOfTheShelf) {
    b.lot("26-014", "wheat starch paste", Amount::of(Mass::grams(100)));
    approved("tear_mending", "SR 11, 12, 19").materials = "wheat starch paste";
    b.file.lines.back().minutes = Minutes{35};
    EXPECT_EQ(exampleLine(b.file, shelfOf(b.file)),
              "repaired tears SR 11 with paste 26-014 0.4 g 35 min");
}

TEST_F(ExampleLineTest, namesNoLotThatIsUsedUpOrOfAnotherKind) {
    b.lot("26-014", "wheat starch paste", Amount::of(Mass::grams(100))).finished = true;
    b.material("linen thread", MaterialClass::thread, Unit::metre);
    b.lot("26-031", "linen thread", Amount::of(Length::millimetres(90'000)));
    approved("tear_mending", "B2").materials = "wheat starch paste";
    const StepLine said = read();
    EXPECT_TRUE(said.uses.empty());
    EXPECT_EQ(said.place, "B2");
}

// For every technique there is: nothing of the example is left over as mere words.
TEST_F(ExampleLineTest, readsAsWhatItSays) {
    b.lot("26-014", "wheat starch paste", Amount::of(Mass::grams(100)));
    for (const Technique& technique : techniques()) {
        SCOPED_TRACE(technique.key);
        b.file.lines.clear();
        b.file.options.clear();
        b.file.decisions.clear();
        b.file.proposals.clear();
        approved(technique.key, "all five, wrapper of SR 19");
        const StepLine said = read();
        EXPECT_EQ(said.technique, technique.key);
        EXPECT_EQ(said.description, "");
        EXPECT_EQ(said.line, b.file.lines.front().id);
        EXPECT_EQ(said.minutes, b.file.lines.front().minutes);
    }
}

TEST_F(ExampleLineTest, withoutAnyApprovalItStillSaysSomethingThatIsRead) {
    const StepLine said = read();
    EXPECT_EQ(said.technique, "surface_cleaning");
    EXPECT_EQ(said.place, "upper board");
    EXPECT_EQ(said.description, "");
}

} // namespace
} // namespace headcap::core
