#include "core/values/measures.h"

#include <type_traits>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

// What must not compile.
template <class A, class B>
concept CanMultiply = requires(A a, B b) {
    a* b;
};
template <class A, class B>
concept CanAdd = requires(A a, B b) {
    a + b;
};
static_assert(!std::is_convertible_v<std::int64_t, Length>);
static_assert(!std::is_constructible_v<Length, std::int64_t>);
static_assert(!CanMultiply<Length, Length>);
static_assert(!CanMultiply<Length, double>);
static_assert(CanMultiply<Length, int>);
static_assert(!CanAdd<Length, Mass>);

TEST(Length, holdsASixteenthOfAnInchExactly) {
    const Length inch = Length::nanometres(25'400'000);
    EXPECT_EQ(Length::nanometres(1'587'500) * 16, inch);
}

TEST(Area, isOfARectangle) {
    EXPECT_EQ(areaOf(Length::millimetres(210), Length::millimetres(297)),
              Area::squareMillimetres(62'370));
}

} // namespace
} // namespace headcap::core
