#include "core/treatment/work_at_hand.h"

#include <gtest/gtest.h>

#include "core/treatment/clocks.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::at;
using tests::day;
using tests::JobBuilder;

class WorkAtHandTest : public testing::Test {
protected:
    WorkAtHandTest() {
        const Proposal& proposal = b.proposal();
        const ProposalOption& option = b.option(proposal, "A");
        b.decision(proposal, DecisionKind::approved).option = option.id;
        std::int64_t position = 0;
        for (const char* technique : {"surface_cleaning", "tear_mending", "guarding", "resewing",
                                      "spine_lining", "rebacking"}) {
            b.line(option, technique).position = ++position;
        }
    }
    void begin(const char* technique) { b.step(technique, "B2", day(2031, 4, 2)); }
    void run(std::size_t line) {
        BenchClock clock{.id = b.ids.next<BenchClock>(),
                         .job = b.file.job.id,
                         .who = b.anyone(),
                         .line = b.file.lines[line].id,
                         .startedAt = at(day(2031, 4, 2)),
                         .step = std::nullopt};
        b.file.clocks.push_back(clock);
    }
    static std::string names(const WorksAtHand& works) {
        std::string all;
        for (const WorkAtHand& work : works.shown) {
            all += (all.empty() ? "" : " ") +
                   (work.line != nullptr ? work.line->technique : std::string{}) +
                   (work.clock != nullptr ? "*" : "");
        }
        all += " |";
        for (const ProposalLine* line : works.rest) {
            all += " " + line->technique;
        }
        return all;
    }

    JobBuilder b;
};

TEST_F(WorkAtHandTest, keepsTheProposalsOrderAfterEachStep) {
    const std::string before = names(worksAtHand(b.file, 6));
    EXPECT_EQ(before, "surface_cleaning tear_mending guarding resewing spine_lining rebacking |");
    for (const char* technique : {"tear_mending", "surface_cleaning", "rebacking", "guarding"}) {
        begin(technique);
        EXPECT_EQ(names(worksAtHand(b.file, 6)), before) << technique;
    }
}

TEST_F(WorkAtHandTest, aClockStandsInThePlaceOfItsLine) {
    run(1);
    EXPECT_EQ(names(worksAtHand(b.file, 6)),
              "surface_cleaning tear_mending* guarding resewing spine_lining rebacking |");
    b.file.clocks.clear();
    EXPECT_EQ(names(worksAtHand(b.file, 6)),
              "surface_cleaning tear_mending guarding resewing spine_lining rebacking |");
}

TEST_F(WorkAtHandTest, whatFindsNoPlaceIsInTheListAndComesWhenAllBeforeItAreBegun) {
    EXPECT_EQ(names(worksAtHand(b.file, 3)),
              "surface_cleaning tear_mending guarding | resewing spine_lining rebacking");
    begin("surface_cleaning");
    begin("guarding");
    EXPECT_EQ(names(worksAtHand(b.file, 3)),
              "surface_cleaning tear_mending guarding | resewing spine_lining rebacking");
    begin("tear_mending");
    EXPECT_EQ(names(worksAtHand(b.file, 3)),
              "resewing spine_lining rebacking | surface_cleaning tear_mending guarding");
}

TEST_F(WorkAtHandTest, everyClockCanBeStopped) {
    run(5);
    run(0);
    b.file.clocks.back().stoppedAt = at(day(2031, 4, 2), 11);
    EXPECT_EQ(names(worksAtHand(b.file, 3)),
              "surface_cleaning tear_mending guarding * * | resewing spine_lining");
    EXPECT_EQ(names(workAtHand(b.file)),
              "* * | surface_cleaning tear_mending guarding resewing spine_lining");
}

TEST_F(WorkAtHandTest, whereThereIsRoomForOneItIsTheNextThatIsNotBegun) {
    begin("surface_cleaning");
    EXPECT_EQ(names(workAtHand(b.file)),
              "tear_mending | surface_cleaning guarding resewing spine_lining rebacking");
}

TEST_F(WorkAtHandTest, withoutAnApprovalThereIsNothing) {
    b.file.decisions.clear();
    EXPECT_EQ(names(worksAtHand(b.file, 3)), " |");
    EXPECT_EQ(names(workAtHand(b.file)), " |");
}

} // namespace
} // namespace headcap::core
