#include "core/treatment/setting_times.h"

#include <gtest/gtest.h>

#include "core/treatment/bench_log.h"
#include "tests/support/apply_change.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::applyTo;
using tests::at;
using tests::day;
using tests::JobBuilder;

TEST(SettingTimes, runTillTheyAreOverAndSaySoUntilWorkGoesOn) {
    JobBuilder b;
    const Instant done = at(day(2031, 4, 1), 10);
    Step& lining = b.step("spine_lining", "spine", day(2031, 4, 1));
    lining.at = done;
    lining.setsUntil = done + Minutes{120};
    auto times = settingTimes(b.file, done + Minutes{60} + std::chrono::seconds{1});
    ASSERT_EQ(times.size(), 1U);
    EXPECT_FALSE(times[0].isOver());
    EXPECT_EQ(times[0].left, Minutes{60});
    times = settingTimes(b.file, done + Minutes{120});
    ASSERT_EQ(times.size(), 1U);
    EXPECT_TRUE(times[0].isOver());
    EXPECT_TRUE(settingTimes(b.file, done + Minutes{120} + std::chrono::hours{25}).empty());
    b.step("casing_in", "book", day(2031, 4, 1)).at = done + Minutes{130};
    EXPECT_TRUE(settingTimes(b.file, done + Minutes{131}).empty());
}

TEST(SettingTimes, theNextToEndComesFirstAndStruckStepsSetNothing) {
    JobBuilder b;
    const Instant now = b.clock.now();
    for (const int minutes : {90, 30, 60}) {
        b.step("spine_lining", std::to_string(minutes), day(2031, 4, 1)).setsUntil =
            now + Minutes{minutes};
    }
    b.file.steps[1].struckAt = now;
    const auto times = settingTimes(b.file, now);
    ASSERT_EQ(times.size(), 2U);
    EXPECT_EQ(times[0].step->place, "60");
    EXPECT_EQ(times[1].step->place, "90");
}

// Logged by the line or the form, a step's setting time is noted by itself: it stays until somebody
// has seen to it, however long that is.
TEST(SettingTimes, oneNotedByItselfStaysUntilItIsSeenTo) {
    JobBuilder b;
    Step step = b.step("spine_lining", "spine", day(2031, 4, 1));
    b.file.steps.clear();
    step.at = at(day(2031, 4, 1), 10);
    step.minutes = Minutes{40};
    step.setsUntil = step.at + Minutes{280};
    applyTo(b.file, *logStep({step}, shelfOf(b.file), b.file.techniques, b.ids));
    const Instant muchLater = *step.setsUntil + std::chrono::hours{70};
    auto times = settingTimes(b.file, muchLater);
    ASSERT_EQ(times.size(), 1U);
    EXPECT_TRUE(times.front().isOver());
    EXPECT_EQ(times.front().from, step.at + step.minutes);
    applyTo(b.file, seeTo(b.file, times.front(), b.anyone(), muchLater, b.ids));
    EXPECT_TRUE(settingTimes(b.file, muchLater).empty());
    EXPECT_EQ(b.file.settings.size(), 1U);
    EXPECT_EQ(b.file.settings.front().seenBy, b.anyone());
}

TEST(SettingTimes, oneThatOnlyAStepSaysCanBeSeenToAsWell) {
    JobBuilder b;
    Step& step = b.step("spine_lining", "spine", day(2031, 4, 1));
    step.setsUntil = b.clock.now() + Minutes{30};
    const Instant over = b.clock.now() + Minutes{31};
    const auto times = settingTimes(b.file, over);
    ASSERT_EQ(times.size(), 1U);
    applyTo(b.file, seeTo(b.file, times.front(), b.anyone(), over, b.ids));
    EXPECT_TRUE(settingTimes(b.file, over).empty());
}

TEST(SettingTimes, whatAStruckStepSetIsNoLongerSetting) {
    JobBuilder b;
    Step step = b.step("spine_lining", "spine", day(2031, 4, 1));
    b.file.steps.clear();
    step.setsUntil = b.clock.now() + Minutes{30};
    applyTo(b.file, *logStep({step}, shelfOf(b.file), b.file.techniques, b.ids));
    EXPECT_EQ(settingTimes(b.file, b.clock.now()).size(), 1U);
    applyTo(b.file, *strikeStep(b.file, step.id, {b.anyone(), b.clock.now(), "wrong"}, b.ids));
    EXPECT_TRUE(settingTimes(b.file, b.clock.now()).empty());
}

// A machine that slept looks at the time once it wakes, and nothing else was counted.
TEST(SettingTimes, dependOnNothingButTheTimeItIs) {
    JobBuilder b;
    b.step("spine_lining", "spine", day(2031, 4, 1)).setsUntil =
        b.clock.now() + std::chrono::hours{8};
    b.file.steps.back().minutes = Minutes{0};
    b.file.steps.back().at = b.clock.now();
    const auto before = settingTimes(b.file, b.clock.now());
    EXPECT_DOUBLE_EQ(shareLeft(before.front(), b.clock.now()), 1.0);
    const Instant awake = b.clock.now() + std::chrono::hours{6};
    EXPECT_EQ(settingTimes(b.file, awake).front().left, Minutes{120});
    EXPECT_DOUBLE_EQ(shareLeft(settingTimes(b.file, awake).front(), awake), 0.25);
    EXPECT_DOUBLE_EQ(shareLeft(before.front(), awake + std::chrono::hours{9}), 0.0);
}

} // namespace
} // namespace headcap::core
