#include "core/photo/photo_steps.h"

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::at;
using tests::day;
using tests::JobBuilder;

const Day kDay = day(2031, 4, 1);

class PhotographsInSteps : public testing::Test {
protected:
    Step& step(int hour, int minute, int minutes) {
        Step& made = m_b.step("guarding", "K7", kDay);
        made.at = at(kDay, hour, minute);
        made.minutes = Minutes{minutes};
        return made;
    }
    void photograph(int hour, int minute) {
        Photograph& made = m_b.photograph(PhotoRole::during);
        made.takenAt = at(kDay, hour, minute);
        made.step = std::nullopt;
        made.finding = std::nullopt;
        made.facsimile = std::nullopt;
    }
    std::vector<PhotoOfStep> found(const PhotoTimes& times = {}) const {
        return photographsInSteps(m_b.file.photographs, m_b.file.steps, times);
    }
    // The step the only photograph falls into; none: it falls nowhere, or could be of several.
    const Step* only(const PhotoTimes& times = {}) const {
        const auto all = found(times);
        return all.size() == 1 ? all.front().step : nullptr;
    }
    JobBuilder m_b;
};

TEST_F(PhotographsInSteps, fallIntoTheStepThatWasBeingDone) {
    step(9, 0, 30);
    step(11, 0, 30);
    photograph(11, 10);
    EXPECT_EQ(only(), &m_b.file.steps[1]);
}

// The slack is a house value: 5 minutes before, 10 after.
TEST_F(PhotographsInSteps, fallIntoItALittleBeforeAndAfterToo) {
    step(9, 0, 30);
    const std::array<std::pair<int, bool>, 6> minutes{
        {{-6, false}, {-5, true}, {0, true}, {30, true}, {40, true}, {41, false}}};
    for (const auto& [minute, falls] : minutes) {
        m_b.file.photographs.clear();
        photograph(9, 0);
        *m_b.file.photographs.back().takenAt += Minutes{minute};
        EXPECT_EQ(found().size(), falls ? 1U : 0U) << minute;
    }
}

TEST_F(PhotographsInSteps, preferTheStepItselfToTheSlackOfAnother) {
    step(9, 0, 30);
    step(9, 31, 30); // its five minutes before reach into the first
    photograph(9, 29);
    EXPECT_EQ(only(), &m_b.file.steps[0]);
}

TEST_F(PhotographsInSteps, areLeftToAPersonWhereTwoWereAtWork) {
    step(9, 0, 60);
    step(9, 30, 60);
    photograph(9, 45);
    ASSERT_EQ(found().size(), 1U);
    EXPECT_EQ(found().front().step, nullptr);
    m_b.file.steps[0].struckAt = m_b.clock.now();
    EXPECT_EQ(only(), &m_b.file.steps[1]);
}

TEST_F(PhotographsInSteps, areReadByTheClockOfTheCamera) {
    step(9, 0, 30);
    photograph(10, 15); // the camera is on summer time: an hour ahead
    EXPECT_TRUE(found().empty());
    EXPECT_EQ(only({.cameraAhead = Minutes{60}}), &m_b.file.steps[0]);
    m_b.file.photographs.clear();
    photograph(8, 15);
    EXPECT_EQ(only({.cameraAhead = Minutes{-60}}), &m_b.file.steps[0]);
}

TEST_F(PhotographsInSteps, ofBeforeAndAfterAndThoseThatBelongSomewhereStayWhereTheyAre) {
    const Id<Step> id = step(9, 0, 30).id;
    photograph(9, 10);
    m_b.file.photographs.back().role = PhotoRole::before;
    photograph(9, 10);
    m_b.file.photographs.back().step = id;
    photograph(9, 10);
    m_b.file.photographs.back().takenAt = std::nullopt;
    EXPECT_TRUE(found().empty());
}

// Moving camera and bench together moves nothing: whatever the day, the answer is the same.
TEST_F(PhotographsInSteps, doNotDependOnTheDay) {
    for (int i = 0; i < 8; ++i) {
        step(9, i * 7, (i * 13) % 40);
    }
    for (int i = 0; i < 40; ++i) {
        photograph(8, 50);
        *m_b.file.photographs.back().takenAt += Minutes{i * 3};
    }
    const auto first = found();
    for (Step& one : m_b.file.steps) {
        one.at += std::chrono::hours{24 * 90 + 3};
    }
    for (Photograph& one : m_b.file.photographs) {
        *one.takenAt += std::chrono::hours{24 * 90 + 3};
    }
    const auto moved = found();
    ASSERT_EQ(first.size(), moved.size());
    ASSERT_FALSE(first.empty());
    for (std::size_t i = 0; i < first.size(); ++i) {
        EXPECT_EQ(first[i].photograph, moved[i].photograph);
        EXPECT_EQ(first[i].step, moved[i].step);
    }
}

TEST(PhotoTimes, areTheWorkshopsOwnWhereItSaysSo) {
    JobBuilder b;
    const auto value = [&](std::string_view key, const char* text) {
        return HouseValue{.id = b.ids.next<HouseValue>(), .key = std::string{key}, .value = text};
    };
    const std::vector own{value(kPhotoBefore, "2"), value(kCameraAhead, "-61"),
                          value(kPhotoAfter, "soon")};
    const PhotoTimes times = photoTimesOf(own);
    EXPECT_EQ(times.before, Minutes{2});
    EXPECT_EQ(times.after, PhotoTimes{}.after);
    EXPECT_EQ(times.cameraAhead, Minutes{-61});
}

} // namespace
} // namespace headcap::core
