// What is asked of a line before it is logged as it stands. Lines are invented.
#include "core/treatment/line_doubts.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using namespace std::chrono_literals;
using tests::day;
using tests::FinishedJob;
using tests::FixedClock;
using Kind = LineDoubt::Kind;

class LineDoubtsTest : public testing::Test {
protected:
    LineDoubtsTest() {
        b.lot("26-015", "wheat starch paste", Amount::of(Mass::grams(100)));
        b.person("Orrin Tay", "OT");
        b.person("Ines Vale", "IV");
        shelf = shelfOf(b.file);
    }
    StepLine read(std::string_view line) const {
        return readStepLine(line,
                            {.shelf = shelf, .people = b.file.people, .today = b.clock.today()});
    }
    std::vector<LineDoubt> doubts(std::string_view line) const {
        return doubtsOf(line, read(line), b.clock.now(), b.clock.now(), &b.file);
    }

    FinishedJob b;
    Shelf shelf;
};

TEST_F(LineDoubtsTest, aLineThatSaysAllIsLoggedUnasked) {
    for (const char* line :
         {"guarded B1 26-015 1 g 20 min", "yesterday guarded B1 20 min",
          "guarded B1 26-015 1 g 9:00-9:20", "examined boards", "guarded B1 9:00-12:00, 45 min"}) {
        EXPECT_EQ(doubts(line), std::vector<LineDoubt>{}) << line;
    }
}

TEST_F(LineDoubtsTest, eachDoubtIsAskedWithWhatItIsOf) {
    struct Row {
        const char* line;
        LineDoubt doubt;
    };
    for (const Row& row : {
             Row{"guarded B1 26-999 1 g 20 min", {Kind::unknownLot, "26-999"}},
             Row{"guarded B1 26-998 1 g 26-999 2 g", {Kind::unknownLot, "26-998, 26-999"}},
             Row{"guarded B1 26-015 1 g EVA 2 g", {Kind::noLot, "EVA"}},
             Row{"not guarded B1", {Kind::denied}},
             Row{"guarded B1 20 min, 40 min", {Kind::severalTimes, "20 min"}},
             Row{"guarded B1 C1 20 min each", {Kind::timeOfEach, "20 min"}},
             Row{"guarded B1 9:00-9:20, 30 min", {Kind::moreThanItHad, "30 min", "20 min"}},
         }) {
        EXPECT_EQ(doubts(row.line), std::vector{row.doubt}) << row.line;
    }
    for (const auto& [line, kind] :
         {std::pair{"lunch, 1 h", Kind::pause}, std::pair{"cooked paste 30 min", Kind::mixing},
          std::pair{"undo last", Kind::striking}}) {
        const auto said = doubts(line);
        EXPECT_NE(std::ranges::find(said, LineDoubt{kind}), said.end()) << line;
    }
}

TEST_F(LineDoubtsTest, wordsAloneAndAPlaceThatIsNotThereAreDoubted) {
    const auto words = doubts("thought about it");
    ASSERT_EQ(words.size(), 1U);
    EXPECT_EQ(words.front().kind, Kind::noTechnique);

    const auto absent = doubts("guarded Z9 26-015 1 g 20 min");
    ASSERT_EQ(absent.size(), 1U);
    EXPECT_EQ(absent.front().kind, Kind::absentPlace);
    EXPECT_EQ(absent.front().what, "Z9");
    EXPECT_EQ(absent.front().why, absentPlace(read("guarded Z9"), &b.file));
    EXPECT_EQ(absentPlace(read("guarded Z9"), nullptr), "");
    EXPECT_EQ(absentPlace(read("guarded upper joint"), &b.file), "");
}

TEST_F(LineDoubtsTest, whatIsStillToComeIsDoubted) {
    const StepLine line = read("guarded B1 20 min");
    const Instant now = b.clock.now();
    EXPECT_EQ(doubtsOf("guarded B1 20 min", line, now + 1min, now, &b.file),
              std::vector<LineDoubt>{{Kind::stillToCome}});
    EXPECT_EQ(doubtsOf("guarded B1 20 min", line, now, now, &b.file), std::vector<LineDoubt>{});
}

TEST_F(LineDoubtsTest, severalPeopleAreDoubted) {
    const auto said = doubts("guarded B1 20 min, by Orrin with Ines");
    ASSERT_FALSE(said.empty());
    EXPECT_EQ(said.front().kind, Kind::severalPeople);
}

} // namespace
} // namespace headcap::core
