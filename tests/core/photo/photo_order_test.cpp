#include "core/photo/photo_order.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/support/fixed_clock.h"

namespace headcap::core {
namespace {

class PhotoOrder : public testing::Test {
protected:
    PhotoOrder() {
        for (int i = 0; i < 4; ++i) {
            photographs.push_back(made(PhotoRole::before, i + 1));
        }
        photographs.push_back(made(PhotoRole::after, 7));
    }
    Photograph made(PhotoRole role, std::int64_t position) {
        return {.id = ids.next<Photograph>(), .job = job, .role = role, .position = position};
    }
    // The photographs of the first role in order, after a move, by their places before it.
    std::vector<std::size_t> orderAfter(std::size_t which, int by) {
        auto now = photographs;
        for (const Photograph& changed : moved(photographs, photographs[which].id, by)) {
            *std::ranges::find(now, changed.id, &Photograph::id) = changed;
        }
        std::ranges::stable_sort(now.begin(), now.begin() + 4, {}, &Photograph::position);
        std::vector<std::size_t> order;
        for (std::size_t i = 0; i < 4; ++i) {
            order.push_back(static_cast<std::size_t>(
                std::ranges::find(photographs, now[i].id, &Photograph::id) - photographs.begin()));
        }
        return order;
    }

    tests::FixedClock clock{*instantFromIso("2031-03-05T09:00:00Z")};
    IdSource ids{clock, 7};
    Id<Job> job = ids.next<Job>();
    std::vector<Photograph> photographs;
};

TEST_F(PhotoOrder, movesOneAndNeverPastTheEnds) {
    using Order = std::vector<std::size_t>;
    EXPECT_EQ(orderAfter(1, -1), (Order{1, 0, 2, 3}));
    EXPECT_EQ(orderAfter(1, 1), (Order{0, 2, 1, 3}));
    EXPECT_EQ(orderAfter(3, -9), (Order{3, 0, 1, 2}));
    EXPECT_EQ(orderAfter(0, 9), (Order{1, 2, 3, 0}));
    EXPECT_TRUE(moved(photographs, photographs[0].id, -1).empty());
    EXPECT_TRUE(moved(photographs, photographs[4].id, -1).empty()) << "alone in its role";
}

TEST_F(PhotoOrder, changesOnlyThosePassed) {
    EXPECT_EQ(moved(photographs, photographs[1].id, 1).size(), 2U);
}

TEST_F(PhotoOrder, putsAnewOneBehindTheLastOfItsRole) {
    EXPECT_EQ(nextPosition(photographs, PhotoRole::before), 5);
    EXPECT_EQ(nextPosition(photographs, PhotoRole::after), 8);
    EXPECT_EQ(nextPosition(photographs, PhotoRole::detail), 1);
}

TEST_F(PhotoOrder, takesThePhotographsOfAJobAtTheBenchForDuring) {
    EXPECT_EQ(usualRole(JobState::received), PhotoRole::before);
    EXPECT_EQ(usualRole(JobState::approved), PhotoRole::before);
    EXPECT_EQ(usualRole(JobState::atTheBench), PhotoRole::during);
    EXPECT_EQ(usualRole(JobState::passed), PhotoRole::after);
}

} // namespace
} // namespace headcap::core
