#include "app/session/aside.h"

#include <atomic>
#include <future>
#include <string>
#include <thread>
#include <vector>

#include <QTest>

#include <gtest/gtest.h>

#include "tests/support/sample_workshop.h"

namespace headcap::app {
namespace {

class AsideTest : public testing::Test {
protected:
    AsideTest() {
        QObject::connect(&session, &Session::said,
                         [this](const Notice& notice) { notices.push_back(notice); });
    }
    // Answers with its name once it is let go.
    auto slow(const std::string& name) {
        return [this, name] {
            ++begun;
            thread = std::this_thread::get_id();
            gate.wait();
            return name;
        };
    }
    auto show() {
        return [this](const std::string& name) { shown.push_back(name); };
    }
    bool isDone() {
        return QTest::qWaitFor([this] { return !aside.isReading(); }, 10'000);
    }

    std::promise<void> opened;
    std::shared_future<void> gate = opened.get_future().share();
    std::atomic_int begun = 0;
    std::atomic<std::thread::id> thread{};
    std::vector<std::string> shown;
    std::vector<Notice> notices;
    tests::SampleWorkshop sample;
    Session session{sample.means()};
    Aside aside{session};
};

TEST_F(AsideTest, theWindowGoesOnWhileItReads) {
    aside.ask(slow("first"), show()); // comes back, though the reading does not
    ASSERT_TRUE(QTest::qWaitFor([this] { return begun == 1; }, 10'000));
    EXPECT_TRUE(aside.isReading());
    EXPECT_TRUE(shown.empty());
    opened.set_value();
    ASSERT_TRUE(isDone());
    EXPECT_EQ(shown, std::vector<std::string>{"first"});
    EXPECT_NE(thread.load(), std::this_thread::get_id());
}

TEST_F(AsideTest, onlyWhatWasAskedLastIsShownAndWhatWaitedIsNotBegun) {
    aside.ask(slow("first"), show());
    ASSERT_TRUE(QTest::qWaitFor([this] { return begun == 1; }, 10'000));
    aside.ask(slow("second"), show());
    aside.ask(slow("third"), show());
    opened.set_value();
    ASSERT_TRUE(isDone());
    EXPECT_EQ(shown, std::vector<std::string>{"third"});
    EXPECT_EQ(begun, 2) << "the second was nobody's any more";
}

TEST_F(AsideTest, aFailedDiskIsSaidAndNothingIsShown) {
    bool hasFailed = false;
    aside.ask(
        []() -> std::string {
            throw core::StoreError{core::StoreError::Code::ioFailed, "as the test asked"};
        },
        show(), [&] { hasFailed = true; });
    ASSERT_TRUE(isDone());
    EXPECT_TRUE(hasFailed);
    EXPECT_TRUE(shown.empty());
    ASSERT_EQ(notices.size(), 1U);
    EXPECT_EQ(notices.front().kind, Notice::Kind::failed);
}

} // namespace
} // namespace headcap::app
