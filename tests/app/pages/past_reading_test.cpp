#include "app/pages/proposal/past_reading.h"

#include <future>
#include <mutex>

#include <QTest>

#include <gtest/gtest.h>

#include "tests/support/fixed_clock.h"

namespace headcap::app {
namespace {

// Answers a question about steps only once it is let go, and notes who asked.
class SlowStore final : public core::RecordStore {
public:
    std::optional<core::Found> find(const core::RecordRef&) const override { return std::nullopt; }
    std::vector<core::Found> all(core::RecordKind) const override { return {}; }
    std::vector<core::Found> allWith(core::RecordKind, std::string_view,
                                     const core::ColumnValue&) const override {
        return {};
    }
    std::vector<core::Found> allBetween(core::RecordKind, std::string_view, std::string_view,
                                        std::string_view) const override {
        return {};
    }
    std::vector<core::Found> newestWith(core::RecordKind, std::string_view,
                                        const core::ColumnValue& value,
                                        std::size_t) const override {
        {
            const std::scoped_lock lock{m_noting};
            m_asked.push_back(std::get<std::string>(value));
            m_threads.push_back(std::this_thread::get_id());
        }
        m_gate.wait();
        if (isBroken) {
            throw core::StoreError{core::StoreError::Code::ioFailed, "as the test asked"};
        }
        return {};
    }
    std::optional<std::string> greatest(core::RecordKind, std::string_view,
                                        std::string_view) const override {
        return std::nullopt;
    }
    // Of the stores to come too; not asked here.
    std::vector<std::string> lately(core::RecordKind, std::string_view, std::size_t) const {
        return {};
    }
    tl::expected<core::Revision, core::Refusal> apply(const core::Change&) override {
        return core::Revision{1};
    }
    std::int64_t dataVersion() const override { return 0; }

    void letGo() { m_opened.set_value(); }
    [[nodiscard]] std::vector<std::string> asked() const {
        const std::scoped_lock lock{m_noting};
        return m_asked;
    }
    [[nodiscard]] std::vector<std::thread::id> threads() const {
        const std::scoped_lock lock{m_noting};
        return m_threads;
    }
    bool isBroken = false;

private:
    std::promise<void> m_opened;
    std::shared_future<void> m_gate = m_opened.get_future().share();
    mutable std::mutex m_noting;
    mutable std::vector<std::string> m_asked;
    mutable std::vector<std::thread::id> m_threads;
};

class PastReadingTest : public testing::Test {
protected:
    PastReadingTest() {
        QObject::connect(&reading, &PastReading::read, &reading,
                         [this](const std::shared_ptr<const PastReading::Past>& past) {
                             answers.push_back(past);
                         });
    }
    bool isAnswered() {
        return QTest::qWaitFor([this] { return !answers.empty(); }, 10'000);
    }
    core::tests::FixedClock clock{core::Instant{}};
    core::IdSource ids{clock, 1};
    core::Id<core::Job> job = ids.next<core::Job>();
    SlowStore store;
    PastReading reading{store};
    std::vector<std::shared_ptr<const PastReading::Past>> answers;
};

TEST_F(PastReadingTest, theWindowsThreadGoesOnWhileItReads) {
    reading.ask({{"guarding"}, job}); // comes back, though the store does not
    ASSERT_TRUE(QTest::qWaitFor([this] { return !store.asked().empty(); }, 10'000));
    EXPECT_TRUE(answers.empty());
    store.letGo();
    ASSERT_TRUE(isAnswered());
    EXPECT_NE(store.threads().front(), std::this_thread::get_id());
    EXPECT_FALSE(answers.front()->failure.has_value());
}

TEST_F(PastReadingTest, aNewQuestionTakesThePlaceOfTheOneBefore) {
    reading.ask({{"guarding", "washing"}, job});
    ASSERT_TRUE(QTest::qWaitFor([this] { return !store.asked().empty(); }, 10'000));
    reading.ask({{"lining"}, job});
    reading.ask({{"resewing"}, job});
    EXPECT_TRUE(answers.empty());
    store.letGo();
    ASSERT_TRUE(isAnswered());
    EXPECT_EQ(store.asked(), (std::vector<std::string>{"guarding", "resewing"}));
    QTest::qWait(20);
    EXPECT_EQ(answers.size(), 1U) << "only the last is answered";
}

TEST_F(PastReadingTest, aFailedDiskIsAnAnswerToo) {
    store.isBroken = true;
    store.letGo();
    reading.ask({{"guarding"}, job});
    ASSERT_TRUE(isAnswered());
    EXPECT_TRUE(answers.front()->failure.has_value());
}

} // namespace
} // namespace headcap::app
