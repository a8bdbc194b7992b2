#include "core/catchwords/book_habits.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>

namespace headcap::core {
namespace {

constexpr double kOddFoldCost = 6.0;
constexpr double kEvenFoldCost = 4.0;

struct Start {
    GatheringRank gathering;
    int at = 0; // of its first leaf among the printed ones
};

// Where each signed gathering begins, by the vote of its marks.
std::vector<Start> startsOf(const BoundBook& book, const std::vector<std::size_t>& printed) {
    std::vector<Start> starts;
    std::map<int, int> votes;
    std::optional<GatheringRank> current;
    const auto close = [&] {
        if (!current)
            return;
        const auto most =
            std::ranges::max_element(votes, {}, [](const auto& vote) { return vote.second; });
        starts.push_back({*current, most->first});
        votes.clear();
    };
    for (std::size_t at = 0; at < printed.size(); ++at) {
        const auto& mark = book.leaves[printed[at]].mark;
        if (!mark || !mark->gathering)
            continue;
        if (!current || *current != *mark->gathering) {
            close();
            current = mark->gathering;
        }
        ++votes[static_cast<int>(at) - mark->leaf + 1];
    }
    close();
    return starts;
}

} // namespace

BookHabits::BookHabits(const BoundBook& book, const LeafOrder& order)
    : m_foldCost(kMostLeavesInGathering + 1), m_signed(kMostLeavesInGathering + 1) {
    learnFolds(book, order.printed);
    learnSigning(book, order.printed);
    learnBare(book, order);
}

// Where bare leaves stand between two leaves whose marks or numbers tell how far apart they are.
void BookHabits::learnBare(const BoundBook& book, const LeafOrder& order) {
    const int unit = book.numbering == Numbering::leaves ? 1 : 2;
    int counted = 0;
    int passedOver = 0;
    const auto learn = [&](int distance, int printedDistance, int bare) {
        counted += distance == printedDistance + bare ? 1 : 0;
        passedOver += distance == printedDistance ? 1 : 0;
    };
    const auto numberOf = [&](std::size_t at) -> std::optional<int> {
        const BoundLeaf& leaf = book.leaves[order.printed[at]];
        if (leaf.numbers[0])
            return leaf.numbers[0]->value;
        if (leaf.numbers[1])
            return leaf.numbers[1]->value - (unit == 2 ? 1 : 0);
        return std::nullopt;
    };
    for (std::size_t at = 1; at < order.printed.size(); ++at) {
        const int bare = order.unprintedBefore[at];
        if (bare == 0)
            continue;
        const auto& mark = book.leaves[order.printed[at]].mark;
        const auto& before = book.leaves[order.printed[at - 1]].mark;
        const auto number = numberOf(at);
        const auto numberBefore = numberOf(at - 1);
        if (number && numberBefore)
            learn((*number - *numberBefore) / unit, 1, bare);
        else if (mark && before && mark->gathering && mark->gathering == before->gathering)
            learn(mark->leaf - before->leaf, 1, bare);
    }
    m_countsBareElsewhere = counted > passedOver + 1;
    const double all = counted + passedOver + 2.0;
    m_countedCost = -std::log((counted + 1.0) / all);
    m_platesCost = -std::log((passedOver + 1.0) / all);
}

double BookHabits::bareCost(int bare, int counted) const {
    if (bare == 0)
        return 0;
    return (counted > 0 ? m_countedCost : 0) + (counted < bare ? m_platesCost : 0);
}

void BookHabits::learnFolds(const BoundBook& book, const std::vector<std::size_t>& printed) {
    const auto starts = startsOf(book, printed);
    m_hasMarks = starts.size() >= 2;
    std::array<int, kMostLeavesInGathering + 1> counts{};
    for (std::size_t at = 0; at + 1 < starts.size(); ++at) {
        const auto steps = gatheringsBetween(starts[at].gathering, starts[at + 1].gathering);
        const int length = starts[at + 1].at - starts[at].at;
        if (steps && *steps == 1 && length >= 1 && length <= kMostLeavesInGathering)
            ++counts[static_cast<std::size_t>(length)];
    }
    const auto mode = static_cast<int>(std::ranges::max_element(counts) - counts.begin());
    const int most = counts[static_cast<std::size_t>(mode)];
    for (int length = 0; length <= kMostLeavesInGathering; ++length) {
        const int count = counts[static_cast<std::size_t>(length)];
        // One gathering of its own length may be a gathering that has lost a leaf.
        const int chance = length % 2 == 0 ? 1 : 2;
        const double seen = length == mode ? count : std::max(0, count - chance);
        const double unseen = length % 2 == 0 ? kEvenFoldCost : kOddFoldCost;
        const double cost = seen > 0 ? std::log(std::max(1.0, most / seen)) : unseen;
        m_foldCost[static_cast<std::size_t>(length)] = std::min(cost, unseen);
        if (seen * 5 >= most && seen > 0)
            m_usual.push_back(length);
    }
    std::ranges::sort(m_usual, {}, [&](int length) { return foldCost(length); });
    if (m_usual.size() > 3)
        m_usual.resize(3);
}

void BookHabits::learnSigning(const BoundBook& book, const std::vector<std::size_t>& printed) {
    std::vector<int> counts(m_signed.size());
    int gatherings = 0;
    std::optional<GatheringRank> current;
    for (const std::size_t leaf : printed) {
        const auto& mark = book.leaves[leaf].mark;
        if (!mark || !mark->gathering)
            continue;
        gatherings += !current || *current != *mark->gathering ? 1 : 0;
        current = mark->gathering;
        if (mark->leaf <= kMostLeavesInGathering)
            ++counts[static_cast<std::size_t>(mark->leaf)];
    }
    for (std::size_t at = 0; at < counts.size(); ++at)
        m_signed[at] = std::clamp((counts[at] + 0.1) / (gatherings + 0.5), 0.01, 0.97);
}

double BookHabits::foldCost(int leaves) const {
    if (leaves < 1 || leaves > kMostLeavesInGathering)
        return kOddFoldCost + 2;
    return m_foldCost[static_cast<std::size_t>(leaves)];
}

bool BookHabits::isUsualFold(int leaves) const {
    return std::ranges::find(m_usual, leaves) != m_usual.end();
}

double BookHabits::unsignedCost(int position) const {
    if (position < 1 || position > kMostLeavesInGathering)
        return 0;
    return -std::log(1.0 - m_signed[static_cast<std::size_t>(position)]);
}

double BookHabits::signedCost(int position) const {
    if (position < 1 || position > kMostLeavesInGathering)
        return 2.0;
    return std::min(2.0, -std::log(m_signed[static_cast<std::size_t>(position)]));
}

} // namespace headcap::core
