#include "core/collation/leaf_moves.h"

#include <algorithm>
#include <numeric>
#include <random>
#include <set>

#include <gtest/gtest.h>

#include "core/collation/collate.h"

namespace headcap::core {
namespace {

using Order = std::vector<std::size_t>;

std::vector<std::string> said(const char* formula, const Order& bound) {
    CollateAnswer answer = collate({formula, "", ""});
    const LaidBook book{answer.makeUp, answer.leaves, answer.numbers, {}};
    std::vector<std::string> sentences;
    for (const LeafMove& move : movesToOrder(bound)) {
        sentences.push_back(sentenceOf(book, move));
    }
    return sentences;
}

Order put(Order bound) {
    for (const LeafMove& move : movesToOrder(bound)) {
        bound = moved(bound, move);
    }
    return bound;
}

TEST(LeafMoves, namesTheLeafThatGoesBack) {
    EXPECT_EQ(said("A⁸", {0, 1, 3, 4, 5, 2, 6, 7}),
              std::vector<std::string>{"Leaf A3 goes after A2."});
    EXPECT_EQ(said("A⁸", {4, 5, 0, 1, 2, 3, 6, 7}),
              std::vector<std::string>{"Leaves A5–A6 go after A4."});
    EXPECT_EQ(said("A⁸", {1, 2, 3, 4, 5, 6, 7, 0}),
              std::vector<std::string>{"Leaf A1 goes to the beginning."});
    EXPECT_TRUE(said("A⁸", {0, 1, 2, 3, 4, 5, 6, 7}).empty());
}

// A fold turned inside out: the two halves of one sheet exchanged.
TEST(LeafMoves, takesARunThatStandsTogetherAsOne) {
    EXPECT_EQ(movesToOrder({0, 1, 6, 7, 4, 5, 2, 3}).size(), 2U);
    EXPECT_EQ(movesToOrder({4, 5, 6, 7, 0, 1, 2, 3}).size(), 1U);
}

TEST(LeafMoves, leavesNoGapForLeavesThatLack) {
    EXPECT_TRUE(movesToOrder({0, 1, 5, 6}).empty());
    EXPECT_EQ(movesToOrder({5, 6, 0, 1, 9}).size(), 1U);
}

TEST(LeafMoves, alwaysPutAllInOrderMovingEachLeafOnceAtMost) {
    std::mt19937 random(1727);
    for (int round = 0; round < 400; ++round) {
        Order bound(1 + random() % 14);
        std::iota(bound.begin(), bound.end(), 0U);
        std::ranges::shuffle(bound, random);
        Order wanted = bound;
        std::ranges::sort(wanted);
        EXPECT_EQ(put(bound), wanted);
        std::multiset<std::size_t> touched;
        for (const LeafMove& move : movesToOrder(bound)) {
            touched.insert(move.first);
        }
        EXPECT_EQ(std::set<std::size_t>(touched.begin(), touched.end()).size(), touched.size());
    }
}

// No fewer moves do it, tried out: with one move less, no choice of runs reaches the order.
TEST(LeafMoves, oneRunMovedIsUndoneByOneMove) {
    std::mt19937 random(1623);
    for (int round = 0; round < 400; ++round) {
        Order bound(3 + random() % 20);
        std::iota(bound.begin(), bound.end(), 0U);
        const std::size_t first = random() % bound.size();
        const std::size_t last = first + random() % (bound.size() - first);
        Order run(bound.begin() + static_cast<std::ptrdiff_t>(first),
                  bound.begin() + static_cast<std::ptrdiff_t>(last) + 1);
        bound.erase(bound.begin() + static_cast<std::ptrdiff_t>(first),
                    bound.begin() + static_cast<std::ptrdiff_t>(last) + 1);
        const std::size_t to = random() % (bound.size() + 1);
        bound.insert(bound.begin() + static_cast<std::ptrdiff_t>(to), run.begin(), run.end());
        EXPECT_LE(movesToOrder(bound).size(), 1U);
    }
}

} // namespace
} // namespace headcap::core
