#include "app/photo/step_photos.h"

#include <QLineEdit>

#include "app/photo/take_in.h"
#include "app/shell/bench_line.h"
#include "app/shell/job_view.h"
#include "tests/app/work/window_test.h"

namespace headcap::app {
namespace {

class StepPhotosTest : public WindowTest {
protected:
    StepPhotosTest() {
        window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench});
    }
    void takeIn(const char* name, std::chrono::minutes ago) {
        photo::IntakeResult result;
        result.kept.push_back({.digest = core::sha256(std::as_bytes(std::span{name, 5})),
                               .name = QString::fromUtf8(name),
                               .mediaType = QStringLiteral("image/jpeg"),
                               .bytes = 10,
                               .size = {400, 300},
                               .takenAt = sample.clock.at - ago});
        photo::recordKept(session, result, {*sample.grafting, core::PhotoRole::during});
    }
    core::Photograph photograph(const char* name) {
        const auto all = file().photographs;
        const auto found = std::ranges::find(all, name, &core::Photograph::fileName);
        EXPECT_NE(found, all.end());
        return *found;
    }
    void say(const char* words) {
        auto& bench = qobject_cast<JobView*>(window.current())->benchLine();
        press(ActionId::toBenchLine);
        QTest::keyClicks(&bench.line(), QString::fromUtf8(words));
        QTest::keyClick(&bench.line(), Qt::Key_Return);
    }
};

TEST_F(StepPhotosTest, aPhotographTakenInAfterItsStepIsPutToItWithTheSameChange) {
    say("guarded K7 30 min");
    const auto step = file().steps.back();
    const auto changes = sample.store.changes();
    takeIn("first.jpg", std::chrono::minutes{10});
    EXPECT_EQ(sample.store.changes(), changes + 1);
    EXPECT_EQ(photograph("first.jpg").step, step.id);
    EXPECT_TRUE(window.notices().sentence().contains(QStringLiteral("by its time")))
        << window.notices().sentence().toStdString();
}

TEST_F(StepPhotosTest, aStepLoggedAfterwardsTakesWhatWasTakenInItAndUndoTakesItBack) {
    takeIn("first.jpg", std::chrono::minutes{10});
    takeIn("other.jpg", std::chrono::hours{30});
    EXPECT_FALSE(photograph("first.jpg").step);
    say("guarded K7 30 min");
    EXPECT_EQ(photograph("first.jpg").step, file().steps.back().id);
    EXPECT_FALSE(photograph("other.jpg").step);
    press(ActionId::undo);
    EXPECT_FALSE(photograph("first.jpg").step);
    EXPECT_FALSE(file().steps.back().struckAt) << "the step itself stands";
}

TEST_F(StepPhotosTest, whatCouldBeOfTwoStepsIsLeftToAPerson) {
    say("guarded K7 30 min");
    say("guarded K8 25 min");
    takeIn("first.jpg", std::chrono::minutes{10});
    EXPECT_FALSE(photograph("first.jpg").step);
    EXPECT_TRUE(window.notices().sentence().contains(QStringLiteral("say which")))
        << window.notices().sentence().toStdString();
}

} // namespace
} // namespace headcap::app
