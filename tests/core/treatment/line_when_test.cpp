// The day and the hours in a line of the log, what it denies, and which of several times is the
// whole. Lines are invented.
#include <gtest/gtest.h>

#include "core/treatment/step_line.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;

// A Wednesday.
const Day kToday = day(2031, 4, 2);

StepLine read(std::string_view line) {
    static const tests::JobBuilder kJob;
    static const Shelf kShelf = shelfOf(kJob.file);
    return readStepLine(line, {.shelf = kShelf, .people = {}, .today = kToday});
}

TEST(LineWhen, readsTheDay) {
    struct Row {
        const char* line;
        Day day;
    };
    for (const Row& row : {
             Row{"yesterday guarded B1 20 min", day(2031, 4, 1)},
             Row{"guarded B1 yesterday", day(2031, 4, 1)},
             Row{"today guarded B1", kToday},
             Row{"last Friday 3 hours resewn", day(2031, 3, 28)},
             Row{"last Wednesday guarded B1", day(2031, 3, 26)},
             Row{"on Wednesday guarded B1", kToday},
             Row{"guarded B1 on Mon", day(2031, 3, 31)},
             Row{"on 12 Nov guarded B1", day(2030, 11, 12)},
             Row{"guarded B1 28 March 2031, 20 min", day(2031, 3, 28)},
             Row{"guarded B1 3 days ago", day(2031, 3, 30)},
             Row{"2031-03-30 guarded B1", day(2031, 3, 30)},
         }) {
        const StepLine said = read(row.line);
        EXPECT_EQ(said.day, row.day) << row.line;
        EXPECT_EQ(said.description, "") << row.line;
        EXPECT_FALSE(said.technique.empty()) << row.line;
    }
}

TEST(LineWhen, takesNothingElseForADay) {
    for (const char* line :
         {"guarded B1 20 min", "washed 2 days", "mended 12 leaves", "dried 3 days under felts",
          "lined spine, may come off", "sunned boards cleaned", "resewn 5 gatherings on 4 cords"}) {
        EXPECT_EQ(read(line).day, std::nullopt) << line;
    }
    // Without the day of the bench there is none to count from.
    static const tests::JobBuilder kJob;
    const Shelf shelf = shelfOf(kJob.file);
    const auto said = readStepLine("guarded B1 yesterday", {.shelf = shelf, .people = {}});
    EXPECT_EQ(said.day, std::nullopt);
    EXPECT_EQ(said.description, "yesterday");
}

TEST(LineWhen, readsFromWhenTillWhen) {
    struct Row {
        const char* line;
        int begins, ends, minutes;
    };
    for (const Row& row : {
             Row{"guarded B1 from 9 to 10:30", 540, 630, 90},
             Row{"guarded B1 9:00-9:20", 540, 560, 20},
             Row{"guarded B1 9:00–9:20", 540, 560, 20},
             Row{"guarded B1 from 14.15 till 14.40", 855, 880, 25},
             Row{"guarded B1 from 9-12.30", 540, 750, 210},
             Row{"guarded B1 from 11 to 1:30", 660, 810, 150},
             Row{"guarded B1 1:15 to 2", 795, 840, 45},
             Row{"guarded B1 2 to 3pm", 840, 900, 60},
             Row{"guarded B1 9am to 12pm", 540, 720, 180},
             // What was said of the work stands: there was a break.
             Row{"guarded B1 from 9 to 10:30, 70 min", 540, 630, 70},
         }) {
        const StepLine said = read(row.line);
        EXPECT_EQ(said.begins, Minutes{row.begins}) << row.line;
        EXPECT_EQ(said.ends, Minutes{row.ends}) << row.line;
        EXPECT_EQ(said.minutes, Minutes{row.minutes}) << row.line;
        EXPECT_EQ(said.place, "B1") << row.line;
        EXPECT_EQ(said.description, "") << row.line;
    }
}

TEST(LineWhen, takesNoLeavesAndNoAmountsForHours) {
    for (const char* line : {"guarded ff. 9-12", "guarded leaves 9 to 12", "guarded pp. 3 to 5",
                             "mended B1 with 0.40 to 1.20 g", "guarded B1 25:00-26:00",
                             "guarded B1 10:30-10:30", "washed 9-12"}) {
        EXPECT_EQ(read(line).begins, std::nullopt) << line;
    }
}

TEST(LineWhen, theWholeTimeIsThatOfTheWork) {
    struct Row {
        const char* line;
        int minutes;
    };
    for (const Row& row : {Row{"washed gathering A, three baths, 25 min each, 1 hr 15", 75},
                           Row{"washed A 20 min, 2 h 15 all told", 135},
                           Row{"washed A 20 min then 40 min, 1 h in all", 60},
                           Row{"washed A 25 min each", 25}, Row{"washed A 20 min", 20}}) {
        EXPECT_EQ(read(row.line).minutes, Minutes{row.minutes}) << row.line;
    }
    EXPECT_EQ(read("lined spine 30 min, nip 10 min").minutes, Minutes{30});
    EXPECT_EQ(read("lined spine 30 min, nip 10 min").sets, Minutes{10});
}

TEST(LineWhen, timesAreReadAsTheyAreWritten) {
    struct Row {
        const char* line;
        int minutes;
    };
    for (const Row& row : {Row{"guarded B1 45m", 45}, Row{"guarded B1 2h10m", 130},
                           Row{"guarded B1 ten min", 10}, Row{"guarded B1 3/4 h", 45},
                           Row{"guarded B1 two hours", 120}, Row{"guarded B1 ½ h", 30}}) {
        const StepLine said = read(row.line);
        EXPECT_EQ(said.minutes, Minutes{row.minutes}) << row.line;
        EXPECT_EQ(said.description, "") << row.line;
    }
    EXPECT_EQ(read("lined spine 30 min, press overnight").sets, Minutes{12 * 60});
    EXPECT_EQ(read("lined spine 30 min, sets overnight").sets, Minutes{12 * 60});
    EXPECT_EQ(read("left it overnight").minutes, std::nullopt);
    EXPECT_EQ(read("guarded B1 2m").minutes, std::nullopt); // metres, more likely
}

// A name of the house is the person's who did it; of two, both are seen.
TEST(LinePeople, aNameIsReadWhereOnePutsIt) {
    tests::JobBuilder b;
    b.person("Orrin Tallow", "OT");
    b.person("Ines Venn", "IV");
    const Shelf shelf = shelfOf(b.file);
    const auto said = [&](std::string_view line) {
        return readStepLine(line, {.shelf = shelf, .people = b.file.people});
    };
    const auto nameOf = [&](const StepLine& line) {
        const Person* person = b.file.person(line.person);
        return person == nullptr ? std::string{} : person->initials;
    };
    EXPECT_EQ(nameOf(said("Ines guarded B1 20 min")), "IV");
    EXPECT_EQ(nameOf(said("guarded B1 20 min Ines")), "IV");
    EXPECT_EQ(nameOf(said("guarded B1, 20 min, by Orrin")), "OT");
    EXPECT_FALSE(said("guarded B1, 20 min, by Orrin").namesSeveral);
    EXPECT_EQ(nameOf(said("Orrin & Ines: guarded B1, 1 h")), "OT");
    EXPECT_TRUE(said("Orrin & Ines: guarded B1, 1 h").namesSeveral);
    EXPECT_TRUE(said("guarded B1 by Orrin with Ines").namesSeveral);
    EXPECT_EQ(nameOf(said("guarded B1 for Orrin the owner")), "");
}

// What was not done must not stand in the log as done.
TEST(LineWhen, aDenialIsSeen) {
    for (const char* line :
         {"NOT done: washing, ink bleeds", "not washed, ink bleeds", "washing not done",
          "no washing", "washing not needed", "boards left without washing", "never washed"}) {
        EXPECT_TRUE(read(line).isDenied) << line;
    }
    for (const char* line : {"washed A1, no change of colour", "guarded B1, not trimmed",
                             "not much left", "washed A", "cleaned without water"}) {
        EXPECT_FALSE(read(line).isDenied) << line;
    }
}

} // namespace
} // namespace headcap::core
