#include "core/treatment/past_work.h"

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;
using tests::JobBuilder;

TEST(PastWork, aPlaceSaysHowManyItNames) {
    const std::pair<const char*, int> kPlaces[]{
        {"K5", 1},        {"B2, C5", 2},         {"B2, C1–C4", 5}, {"C1-C4", 4}, {"ff. 12-24", 13},
        {"pp. 1-96", 48}, {"pp. 9-14", 3},       {"3 plates", 3},  {"spine", 1}, {"", 1},
        {"A1–C4", 1},     {"gatherings A-C", 1}, {"C4–C1", 1},
    };
    for (const auto& [place, count] : kPlaces) {
        EXPECT_EQ(countOfPlace(place), count) << place;
    }
}

TEST(PastWork, theCoveringIsTheFirstOneNamed) {
    EXPECT_EQ(coveringOf("Contemporary calf over pasteboard, paper label"), "leather");
    EXPECT_EQ(coveringOf("limp vellum, ties lacking"), "vellum");
    EXPECT_EQ(coveringOf("Green cloth, printed paper label"), "cloth");
    EXPECT_EQ(coveringOf("in sheets"), "");
}

TEST(PastWork, addsUpWhatStandsOfOneTechnique) {
    JobBuilder b;
    b.file.item.height = Length::millimetres(210);
    b.file.item.binding = "calf";
    b.step("tear_mending", "B2, C5", day(2031, 3, 17)).minutes = Minutes{30};
    b.step("tear_mending", "D1–D3", day(2031, 3, 18)).minutes = Minutes{45};
    b.step("tear_mending", "E1", day(2031, 3, 18)).minutes = Minutes{500};
    b.file.steps.back().struckAt = b.clock.now();
    const auto work = pastWorkOf(b.file.item, b.file.steps, {});
    ASSERT_TRUE(work.has_value());
    EXPECT_EQ(work->minutes, Minutes{75});
    EXPECT_EQ(work->count, 5);
    EXPECT_EQ(work->steps, 2U);
    EXPECT_EQ(work->covering, "leather");
    EXPECT_EQ(pastWorkOf(b.file.item, std::vector<Step>{}, {}), std::nullopt);
}

TEST(PastWork, aLineSaysHowManyPiecesItsStepsWere) {
    JobBuilder b;
    const Proposal proposal = b.proposal();
    const ProposalOption option = b.option(proposal, "A");
    b.line(option, "tear_mending").count = 14;
    for (const unsigned one : {17U, 18U}) {
        Step& step = b.step("tear_mending", "text block", day(2031, 3, one));
        step.minutes = Minutes{70};
        step.line = b.file.lines.front().id;
    }
    const auto work = pastWorkOf(b.file.item, b.file.steps, b.file.lines);
    ASSERT_TRUE(work.has_value());
    EXPECT_EQ(work->count, 14);
    EXPECT_EQ(work->minutes, Minutes{140});
    EXPECT_EQ(askedOf(b.file.lines.front(), b.file.item).count, 14);
}

} // namespace
} // namespace headcap::core
