#include "app/session/intake.h"

#include <limits>
#include <thread>

#include <QTest>

#include <gtest/gtest.h>

namespace headcap::app {
namespace {

// Takes in numbers; each waits till it is let through.
class Numbers : public Intake {
public:
    void take(const std::vector<int>& numbers) {
        const auto taken = std::make_shared<std::vector<int>>();
        start({.files = static_cast<int>(numbers.size()),
               .takeOne =
                   [this, numbers, taken](int at) {
                       const int number = numbers[static_cast<std::size_t>(at)];
                       begun = number;
                       while (through < number) {
                           std::this_thread::yield();
                       }
                       if (number == 13) {
                           throw std::runtime_error("no such number");
                       }
                       taken->push_back(number);
                   },
               .give =
                   [this, taken](const std::optional<core::StoreError>& failure) {
                       given.push_back(*taken);
                       failures.push_back(failure ? failure->what() : "");
                   }});
    }

    std::atomic_int begun = 0;
    std::atomic_int through = 0; // up to this number
    std::vector<std::vector<int>> given;
    std::vector<std::string> failures;
};

bool isIdle(const Intake& intake) {
    return QTest::qWaitFor([&] { return !intake.isBusy(); }, 10'000);
}

TEST(Intake, whatIsAskedForAfterTheStopIsTakenIn) {
    Numbers numbers;
    numbers.take({1, 2, 3});
    ASSERT_TRUE(QTest::qWaitFor([&] { return numbers.begun == 1; }, 10'000));
    numbers.stop();
    numbers.take({4, 5});
    numbers.through = 5;
    ASSERT_TRUE(isIdle(numbers));
    EXPECT_EQ(numbers.given, (std::vector<std::vector<int>>{{1}, {4, 5}}));
}

// More than could ever be taken in.
class Endless : public Intake {
public:
    void take() {
        start({.files = std::numeric_limits<int>::max(),
               .takeOne = [this](int) { ++taken; },
               .give = [this](const auto&) { given = taken; }});
    }
    std::atomic_int taken = 0;
    int given = 0;
};

TEST(Intake, finishingStopsAndGivesWhatWasKeptBeforeItReturns) {
    Endless files;
    files.take();
    ASSERT_TRUE(QTest::qWaitFor([&] { return files.taken > 0; }, 10'000));
    files.finish();
    EXPECT_FALSE(files.isBusy());
    EXPECT_GT(files.given, 0);
    EXPECT_EQ(files.given, files.taken);
}

TEST(Intake, whatFailsIsSaidAndTheRestIsNotTried) {
    Numbers numbers;
    numbers.through = 20;
    numbers.take({12, 13, 14});
    ASSERT_TRUE(isIdle(numbers));
    EXPECT_EQ(numbers.given, (std::vector<std::vector<int>>{{12}}));
    EXPECT_NE(numbers.failures.front().find("no such number"), std::string::npos);
}

} // namespace
} // namespace headcap::app
