#include "core/report/compose_proposal.h"

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;
using tests::JobBuilder;

class ComposeProposalTest : public testing::Test {
protected:
    ComposeProposalTest() {
        b.file.workshop = Workshop{.id = b.ids.next<Workshop>(),
                                   .name = "The Example Bindery",
                                   .terms = "Payment within thirty days"};
        Proposal& made = b.proposal();
        made.aim = "safe to be read";
        made.notIncluded = "a box";
        made.taxPpm = 190'000;
        made.deposit = Money{10'000, "EUR"};
        made.insuredValue = Money{250'000, "EUR"};
        made.readyOn = day(2031, 6, 1);
        made.sentOn.reset();
        proposal = made.id;
        b.option(made, "Do nothing");
        const ProposalOption option = b.option(made, "A: resew");
        b.line(option, "resewing").price = Money{38'400, "EUR"};
        b.file.lines.back().materialsCost = Money{1'250, "EUR"};
        b.line(option, "guarding").price = Money{3'200, "EUR"};
        b.file.lines.back().count = 4;
    }
    Document paper() { return composeProposal(b.file, b.file.proposals.front(), day(2031, 4, 2)); }
    bool says(const std::string& words) {
        return plainText(paper()).find(words) != std::string::npos;
    }

    JobBuilder b;
    std::optional<Id<Proposal>> proposal;
};

TEST_F(ComposeProposalTest, standsOnTheLetterheadAndIsADraftUntilItIsSent) {
    EXPECT_EQ(paper().letterhead.name, "The Example Bindery");
    EXPECT_EQ(paper().title, "Proposal 1");
    EXPECT_TRUE(paper().isDraft);
    b.file.proposals.front().sentOn = day(2031, 4, 1);
    EXPECT_FALSE(paper().isDraft);
    EXPECT_EQ(paper().date, day(2031, 4, 1));
}

TEST_F(ComposeProposalTest, saysWhatItCostsWithItsTax) {
    EXPECT_TRUE(says("384.00 EUR"));
    EXPECT_TRUE(says("12.50 EUR"));
    EXPECT_TRUE(says("428.50 EUR")); // 384.00 + 12.50 + 32.00
    EXPECT_TRUE(says("81.42 EUR"));  // 19 % is 81.415
    EXPECT_TRUE(says("509.92 EUR"));
    EXPECT_TRUE(says("Guarding (4)"));
}

TEST_F(ComposeProposalTest, taxByLineStandsInItsColumn) {
    b.file.proposals.front().taxPerLine = true;
    EXPECT_TRUE(says("75.34 EUR")); // 19 % of 396.50 is 75.335
    EXPECT_TRUE(says("6.08 EUR"));  // of 32.00
    EXPECT_TRUE(says("rounded by line"));
}

TEST_F(ComposeProposalTest, offersDoingNothingAndSaysWhatCantBeUndone) {
    EXPECT_TRUE(says("Do nothing"));
    EXPECT_TRUE(says("No work is charged for this option."));
    b.line(b.file.options.back(), "removing");
    EXPECT_TRUE(says("By the nature of the work: removing earlier material"));
}

// AIC Commentary 26: the owner agrees in writing to what goes into the book.
TEST_F(ComposeProposalTest, saysTheMaterialsOfEachLine) {
    b.file.lines.back().materials = "guard paper, wheat starch paste";
    EXPECT_TRUE(says("With guard paper, wheat starch paste."));
}

TEST_F(ComposeProposalTest, saysTheHazardOfTheBookAndItsState) {
    b.file.hazards.push_back({.id = b.ids.next<Hazard>(),
                              .item = b.file.item.id,
                              .term = "arsenical_green",
                              .state = HazardState::suspected,
                              .place = "cover paper"});
    EXPECT_TRUE(says("Arsenical green, suspected"));
    EXPECT_TRUE(says("Cover paper."));
    b.file.hazards.back().state = HazardState::cleared;
    EXPECT_FALSE(says("Arsenical green, suspected"));
}

TEST_F(ComposeProposalTest, saysWhetherTaxIsInIt) {
    EXPECT_TRUE(says("In all, with its tax"));
    b.file.proposals.front().taxPpm = 0;
    EXPECT_TRUE(says("In all; no tax is added"));
    EXPECT_TRUE(says("428.50 EUR"));
}

// A sum that stands without what it adds up tells the owner nothing.
TEST_F(ComposeProposalTest, itsTotalsAreMarkedAsTotals) {
    std::size_t totals = 0;
    for (const Section& section : paper().sections) {
        for (const Block& block : section.blocks) {
            const auto* table = std::get_if<Table>(&block);
            for (const TableRow& row : table != nullptr ? table->rows : std::vector<TableRow>{}) {
                const bool isTotal = row.kind == TableRow::Kind::total;
                totals += isTotal ? 1 : 0;
                EXPECT_NE(isTotal, row.source.has_value());
            }
        }
    }
    EXPECT_EQ(totals, 3U); // together, tax, in all
}

TEST_F(ComposeProposalTest, whatCanBeUndoneRaisesNoAlarm) {
    b.file.options.back().irreversible = "Nothing.";
    b.file.lines.back().technique = "guarding";
    b.file.lines.front().technique = "guarding";
    EXPECT_TRUE(says("All of it can be undone."));
    EXPECT_FALSE(says("Can't be undone"));
}

TEST_F(ComposeProposalTest, wordsThatBeginWithTheTechniqueDoNotSayItTwice) {
    b.file.lines.back().count = 1;
    b.file.lines.back().description = "Guarding of four folds";
    EXPECT_TRUE(says("Guarding of four folds"));
    EXPECT_FALSE(says("Guarding. Guarding"));
    b.file.lines.back().count = 4;
    EXPECT_TRUE(says("Guarding of four folds (4)"));
    struct Words {
        const char* technique;
        const char* words;
        bool isSaid;
    };
    for (const Words& one : std::initializer_list<Words>{
             {"washing", "Wash the stained leaves", true},
             {"tear_mending", "Mend tears, fill the corner", true},
             {"disbinding", "Take down, remove the glue", true},
             {"wrapper", "Wrapper and folders", true},
             {"guarding", "Guard folds; charts on new guards", true},
             {"tear_mending", "Mend the corner", true},
             {"printing_facsimile", "Two charts, marked on the leaf", false},
             {"rebacking", "New back under the old", false},
             {"washing", "Was never washed", false},
             {"washing", "", false}}) {
        b.file.lines.back().technique = one.technique;
        b.file.lines.back().description = one.words;
        const std::string name = b.file.techniques.nameOf(one.technique);
        EXPECT_EQ(says(name + " (4)"), !one.isSaid) << one.words;
        EXPECT_TRUE(says(one.words)) << one.words;
    }
}

TEST_F(ComposeProposalTest, anEmptyColumnIsLeftOut) {
    EXPECT_TRUE(says("For materials"));
    for (ProposalLine& line : b.file.lines) {
        line.materialsCost.reset();
        line.place.clear();
    }
    EXPECT_FALSE(says("For materials"));
    EXPECT_FALSE(says("Place"));
    EXPECT_TRUE(says("Price"));
}

TEST_F(ComposeProposalTest, saysItsTerms) {
    for (const char* words :
         {"A box.", "100.00 EUR", "2,500.00 EUR", "1 June 2031", "Payment within thirty days."}) {
        EXPECT_TRUE(says(words)) << words;
    }
}

} // namespace
} // namespace headcap::core
