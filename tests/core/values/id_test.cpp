#include "core/values/id.h"

#include <set>
#include <type_traits>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

struct Item;
struct Job;
static_assert(!std::is_convertible_v<Id<Item>, Id<Job>>);
static_assert(!std::is_constructible_v<Id<Item>, Id<Job>>);
static_assert(!std::is_convertible_v<Uuid, Id<Item>>);

class FakeClock final : public Clock {
public:
    [[nodiscard]] Instant now() const override { return m_now; }
    [[nodiscard]] Day today() const override { return dayOf(m_now); }
    [[nodiscard]] Day dayOf(Instant instant) const override {
        return Day{std::chrono::floor<std::chrono::days>(instant)};
    }
    void set(std::int64_t milliseconds) {
        m_now = Instant{std::chrono::milliseconds{milliseconds}};
    }

private:
    Instant m_now{std::chrono::milliseconds{0x017F22E279B0}};
};

// RFC 9562, appendix A.6: 2022-02-22 14:22:22 GMT-05:00.
constexpr const char* kVector = "017f22e2-79b0-7cc3-98c4-dc0c0c07398f";

TEST(Uuid, readsTheVectorOfTheRfc) {
    const auto uuid = Uuid::fromText(kVector);
    ASSERT_TRUE(uuid.has_value());
    EXPECT_EQ(uuid->text(), kVector);
}

TEST(Uuid, beginsWithTheTimeOfTheVector) {
    std::mt19937_64 chance(7);
    const Instant time = *instantFromIso("2022-02-22T19:22:22.000Z");
    for (int i = 0; i < 1'000; ++i) {
        const std::string text = Uuid::make(time, chance).text();
        EXPECT_EQ(text.substr(0, 15), "017f22e2-79b0-7");
        EXPECT_TRUE(Uuid::fromText(text).has_value()) << text;
    }
}

TEST(Uuid, refusesOtherVersionsAndSpellings) {
    for (const char* text : {
             "",
             "017F22E2-79B0-7CC3-98C4-DC0C0C07398F",
             "017f22e279b07cc398c4dc0c0c07398f",
             "{017f22e2-79b0-7cc3-98c4-dc0c0c07398f}",
             "919108f7-52d1-4320-9bac-f847db4148a8", // version 4, RFC 9562 A.3
             "1ec9414c-232a-6b00-b3c8-9f6bdeced846", // version 6, A.5
             "017f22e2-79b0-7cc3-c8c4-dc0c0c07398f", // variant
             "017f22e2-79b0-7cc3-98c4-dc0c0c07398g",
         }) {
        EXPECT_FALSE(Uuid::fromText(text).has_value()) << text;
    }
}

TEST(IdSource, ascendsWhateverTheClockDoes) {
    FakeClock clock;
    IdSource source(clock, 42);
    std::string last = source.nextUuid().text();
    for (const std::int64_t time : {5'000, 5'000, 9'000, 1'000, 1'001, 9'000, 9'001, 0}) {
        clock.set(1'700'000'000'000 + time);
        for (int i = 0; i < 5'000; ++i) {
            const std::string next = source.next<Item>().text();
            ASSERT_LT(last, next);
            ASSERT_TRUE(Uuid::fromText(next).has_value()) << next;
            last = next;
        }
    }
}

TEST(IdSource, standsTimesThatNoKeyHolds) {
    FakeClock clock;
    clock.set(-1);
    IdSource source(clock, 42);
    EXPECT_TRUE(Uuid::fromText(source.nextUuid().text()).has_value());
}

TEST(IdSource, isRepeatableBySeedAndElseIsNot) {
    const FakeClock clock;
    IdSource a(clock, 42);
    IdSource b(clock, 42);
    EXPECT_EQ(a.nextUuid(), b.nextUuid());
    IdSource c(clock);
    IdSource d(clock);
    EXPECT_NE(c.nextUuid(), d.nextUuid());
}

} // namespace
} // namespace headcap::core
