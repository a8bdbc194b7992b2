#include "app/work/setting_watch.h"

#include "app/shell/job_view.h"
#include "app/shell/quiet_line.h"
#include "tests/app/work/window_test.h"

namespace headcap::app {
namespace {

class SettingWatchTest : public WindowTest {
protected:
    core::Id<core::Setting> set(const char* what, std::chrono::minutes until) {
        const auto id = sample.ids.next<core::Setting>();
        core::Change change{.sentence = "It sets"};
        change.add(core::Setting{.id = id,
                                 .job = *sample.grafting,
                                 .step = std::nullopt,
                                 .what = what,
                                 .startedAt = sample.clock.at,
                                 .endsAt = sample.clock.at + until,
                                 .seenBy = std::nullopt});
        EXPECT_TRUE(session.apply(std::move(change)));
        return id;
    }
    void pass(std::chrono::minutes minutes) {
        sample.clock.at += minutes;
        window.settings().look();
    }
    QString said() { return window.settingLine().sentence(); }
    core::Setting kept(const core::Id<core::Setting>& id) {
        return core::find(sample.store, id)->record;
    }
};

TEST_F(SettingWatchTest, saysOnAnyPageThatASettingIsOver) {
    window.settings().putAside(); // the sample's own
    set("spine lining", std::chrono::minutes{90});
    window.go({ViewId::materials});
    pass(std::chrono::minutes{89});
    EXPECT_EQ(said(), QString{});
    pass(std::chrono::minutes{1});
    EXPECT_TRUE(said().contains(QStringLiteral("spine lining"))) << said().toStdString();
    EXPECT_TRUE(said().contains(fromCore(file().job.number)));
}

// A machine that slept a night wakes long after the end.
TEST_F(SettingWatchTest, isRightAfterASleepAndAfterARestart) {
    window.settings().putAside();
    set("boards in the press", std::chrono::minutes{90});
    pass(std::chrono::hours{15});
    EXPECT_TRUE(said().contains(QStringLiteral("boards in the press")));
    EXPECT_TRUE(window.close());
    Session again{sample.means()};
    MainWindow second{again};
    second.show();
    EXPECT_TRUE(second.settingLine().sentence().contains(QStringLiteral("boards in the press")));
}

TEST_F(SettingWatchTest, isSeenToByAKeyAndThenSaidNoMore) {
    window.settings().putAside();
    const auto id = set("spine lining", std::chrono::minutes{10});
    pass(std::chrono::minutes{30});
    press(ActionId::seeToSetting);
    EXPECT_EQ(kept(id).seenAt, sample.clock.at);
    EXPECT_EQ(kept(id).seenBy, session.person());
    EXPECT_EQ(said(), QString{});
    press(ActionId::undo);
    EXPECT_TRUE(said().contains(QStringLiteral("spine lining")));
}

TEST_F(SettingWatchTest, oneKeyGoesToTheBenchWhereItSets) {
    window.settings().putAside();
    set("spine lining", std::chrono::minutes{10});
    pass(std::chrono::minutes{30});
    press(ActionId::toSetting);
    ASSERT_EQ(window.currentId(), ViewId::job);
    EXPECT_EQ(qobject_cast<JobView*>(window.current())->page(), core::Page::bench);
}

TEST_F(SettingWatchTest, severalAreSaidInOneLine) {
    window.settings().putAside();
    set("first", std::chrono::minutes{10});
    set("second", std::chrono::minutes{20});
    pass(std::chrono::minutes{30});
    EXPECT_TRUE(said().contains(QStringLiteral("second"))) << "the last to end stands first";
    EXPECT_TRUE(said().contains(QStringLiteral("And 1 more."))) << said().toStdString();
}

} // namespace
} // namespace headcap::app
