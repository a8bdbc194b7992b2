#include "app/work/day_view.h"

#include <QClipboard>
#include <QGuiApplication>

#include "app/form/ruled_table.h"
#include "app/shell/job_view.h"
#include "core/values/spoken_time.h"
#include "tests/app/work/window_test.h"

namespace headcap::app {
namespace {

class DayViewTest : public WindowTest {
protected:
    void pressAndRead(ActionId id) {
        press(id);
        ASSERT_TRUE(QTest::qWaitFor([this] { return !view().isReading(); }, 10'000));
    }
    DayView& view() { return *qobject_cast<DayView*>(window.current()); }
    // A step of a job, begun so long ago.
    core::Id<core::Step> log(const core::Id<core::Job>& job, const char* place,
                             std::chrono::minutes ago, int minutes) {
        return sample.store.put(core::Step{.id = sample.ids.next<core::Step>(),
                                           .job = job,
                                           .part = std::nullopt,
                                           .at = sample.clock.at - ago,
                                           .who = *sample.orrin,
                                           .technique = "guarding",
                                           .place = place,
                                           .minutes = core::Minutes{minutes},
                                           .line = std::nullopt,
                                           .corrects = std::nullopt,
                                           .struckBy = std::nullopt});
    }
};

TEST_F(DayViewTest, showsTodayOverAllJobsInOrderOfTime) {
    const auto later = log(*sample.hymnal, "Z9", std::chrono::minutes{30}, 20);
    const auto before = log(*sample.grafting, "Z8", std::chrono::minutes{90}, 25);
    pressAndRead(ActionId::dayOfWork);
    ASSERT_EQ(window.currentId(), ViewId::day);
    const auto& rows = view().log().rows();
    EXPECT_GE(rows.rowOf(before.uuid()), 0);
    EXPECT_LT(rows.rowOf(before.uuid()), rows.rowOf(later.uuid()));
    const QString text = view().asText();
    EXPECT_TRUE(text.contains(QStringLiteral("Z8"))) << text.toStdString();
    const auto job = core::find(sample.store, *sample.hymnal)->record;
    EXPECT_TRUE(text.contains(fromCore(job.number)));
}

TEST_F(DayViewTest, goesADayBackAndForthByKeys) {
    const auto old = log(*sample.hymnal, "Z7", std::chrono::hours{24 * 3}, 35);
    pressAndRead(ActionId::dayOfWork);
    const core::Day today = view().day();
    for (int i = 0; i < 3; ++i) {
        pressAndRead(ActionId::dayBefore);
    }
    EXPECT_EQ(view().day(), core::dayAfter(today, -3));
    EXPECT_GE(view().log().rows().rowOf(old.uuid()), 0);
    pressAndRead(ActionId::dayAfter);
    EXPECT_EQ(view().day(), core::dayAfter(today, -2));
    pressAndRead(ActionId::today);
    EXPECT_EQ(view().day(), today);
}

TEST_F(DayViewTest, enterGoesToTheStepInItsLog) {
    log(*sample.hymnal, "Z9", std::chrono::minutes{30}, 20);
    pressAndRead(ActionId::dayOfWork);
    view().log().setFocus();
    QTest::keyClick(&view().log(), Qt::Key_End);
    QTest::keyClick(&view().log(), Qt::Key_Return);
    ASSERT_EQ(window.currentId(), ViewId::job);
    EXPECT_EQ(qobject_cast<JobView*>(window.current())->page(), core::Page::bench);
    pressAndRead(ActionId::back);
    EXPECT_EQ(window.currentId(), ViewId::day);
}

TEST_F(DayViewTest, isCopiedAsText) {
    log(*sample.hymnal, "Z9", std::chrono::minutes{30}, 20);
    pressAndRead(ActionId::dayOfWork);
    press(ActionId::copyAsText);
    EXPECT_EQ(QGuiApplication::clipboard()->text(), view().asText());
    EXPECT_TRUE(view().asText().contains(QStringLiteral("Z9")));
}

TEST_F(DayViewTest, aDayWithoutWorkSaysSo) {
    pressAndRead(ActionId::dayOfWork);
    view().showDay(std::chrono::year{2020} / 1 / 1);
    EXPECT_TRUE(view().asText().contains(QStringLiteral("Nothing was logged on this day.")));
    ASSERT_TRUE(QTest::qWaitFor([this] { return !view().isReading(); }, 10'000));
    EXPECT_EQ(view().log().rows().rowCount(), 0);
    EXPECT_TRUE(view().asText().contains(QStringLiteral("Nothing was logged on this day.")));
}

} // namespace
} // namespace headcap::app
