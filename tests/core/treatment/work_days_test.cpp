#include "core/treatment/work_days.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::at;
using tests::day;
using tests::JobBuilder;

TEST(WorkDays, goByDayInOrderOfTimeAndAddWhatStands) {
    JobBuilder b;
    b.step("guarding", "K7", day(2031, 4, 2)).minutes = Minutes{18};
    b.step("guarding", "K8", day(2031, 4, 1)).minutes = Minutes{25};
    b.step("guarding", "K9", day(2031, 4, 2)).minutes = Minutes{100};
    b.file.steps.back().struckAt = b.clock.now();
    b.file.steps.back().at = at(day(2031, 4, 2), 9);
    const auto days = workDays(b.file, b.clock);
    ASSERT_EQ(days.size(), 2U);
    EXPECT_EQ(days[0].day, day(2031, 4, 1));
    EXPECT_EQ(days[0].minutes, Minutes{25});
    ASSERT_EQ(days[1].steps.size(), 2U);
    EXPECT_EQ(days[1].steps[0]->place, "K9");
    EXPECT_EQ(days[1].minutes, Minutes{18});
}

TEST(WorkDays, setACorrectionBesideWhatItCorrects) {
    JobBuilder b;
    b.step("guarding", "first", day(2031, 4, 1)).at = at(day(2031, 4, 1), 9);
    b.step("guarding", "between", day(2031, 4, 1)).at = at(day(2031, 4, 1), 10);
    b.step("guarding", "rightly", day(2031, 4, 1)).at = at(day(2031, 4, 1), 11);
    b.file.steps[0].struckAt = b.clock.now();
    b.file.steps[2].corrects = b.file.steps[0].id;
    const auto days = workDays(b.file, b.clock);
    ASSERT_EQ(days.size(), 1U);
    ASSERT_EQ(days[0].steps.size(), 3U);
    EXPECT_EQ(days[0].steps[1]->place, "rightly");
    EXPECT_EQ(days[0].steps[2]->place, "between");
    EXPECT_EQ(correctionOf(b.file, b.file.steps[0]), &b.file.steps[2]);
    EXPECT_EQ(correctionOf(b.file, b.file.steps[1]), nullptr);
}

TEST(WorkDays, loseNoStepWhateverCorrectsWhat) {
    JobBuilder b;
    for (int i = 0; i < 12; ++i) {
        b.step("guarding", "K", day(2031, 4, 1 + static_cast<unsigned>(i % 3))).at +=
            std::chrono::minutes{(i * 7) % 12};
        if (i >= 2) {
            b.file.steps.back().corrects = b.file.steps[static_cast<std::size_t>(i) - 2].id;
        }
    }
    std::vector<const Step*> shown;
    for (const WorkDay& one : workDays(b.file, b.clock)) {
        shown.insert(shown.end(), one.steps.begin(), one.steps.end());
    }
    std::ranges::sort(shown);
    EXPECT_EQ(shown.size(), b.file.steps.size());
    EXPECT_EQ(std::unique(shown.begin(), shown.end()), shown.end());
}

TEST(WorkDays, countTheHoursOfEachPerson) {
    JobBuilder b;
    const Id<Person> other = b.person("T. Vale", "TV").id;
    b.step("guarding", "K7", day(2031, 4, 1)).minutes = Minutes{10};
    b.step("guarding", "K8", day(2031, 4, 1)).minutes = Minutes{20};
    b.file.steps.back().who = other;
    b.step("guarding", "K9", day(2031, 4, 1)).minutes = Minutes{90};
    b.file.steps.back().struckAt = b.clock.now();
    const auto hours = hoursByPerson(b.file);
    ASSERT_EQ(hours.size(), 2U);
    EXPECT_EQ(hours[0].who, other);
    EXPECT_EQ(hours[0].minutes, Minutes{20});
    EXPECT_EQ(hours[1].minutes, Minutes{10});
}

} // namespace
} // namespace headcap::core
