#include "core/catchwords/leaf_story.h"

#include <algorithm>
#include <limits>

#include "core/catchwords/story_numbers.h"
#include "core/catchwords/storyteller.h"

namespace headcap::core {
namespace {

constexpr std::size_t kBeam = 36;

} // namespace

Storyteller::Storyteller(const BoundBook& book, const LeafOrder& order, const LeafLinks& links,
                         const BookHabits& habits)
    : m_book(book), m_order(order), m_links(links), m_habits(habits),
      m_unit(book.numbering == Numbering::leaves ? 1 : 2) {
    for (const std::size_t leaf : order.printed)
        m_marks.push_back(intern(book.leaves[leaf].mark));
}

std::vector<StoryLeaf> Storyteller::tell() {
    const std::size_t count = m_order.printed.size();
    m_layers.resize(count);
    m_turns.resize(count);
    for (std::size_t at = 0; at < count; ++at) {
        m_at = at;
        m_turns[at] =
            at > 0 ? m_links.between(m_order.printed[at - 1], m_order.printed[at]) : std::nullopt;
        m_next.clear();
        m_index.clear();
        m_best = std::numeric_limits<double>::max();
        if (at == 0)
            begin();
        else
            advance();
        prune();
    }
    return traceBack();
}

Storyteller::Mark Storyteller::intern(const std::optional<PrintedMark>& mark) {
    if (!mark)
        return {};
    if (!mark->gathering)
        return {.any = true, .leaf = mark->leaf};
    const auto found = std::ranges::find(m_series, mark->gathering->series);
    const auto series = static_cast<int>(found - m_series.begin());
    if (found == m_series.end())
        m_series.push_back(mark->gathering->series);
    return {true, true, series, mark->gathering->rank, mark->leaf};
}

// What the leaf itself shows against what the account wants of it.
void Storyteller::emit(Node node, double cost) {
    cost += markCost(node);
    if (cost > m_best + kBeamDepth)
        return;
    const NumberReader numbers(m_book.leaves[m_order.printed[m_at]], m_order.unprintedBefore[m_at],
                               m_unit, m_habits);
    const NumberReadings found = numbers.read(node);
    for (std::size_t reading = 0; reading < found.count; ++reading)
        keep(found.readings[reading].node, cost + found.readings[reading].cost);
}

double Storyteller::markCost(Node& node) const {
    const Mark& mark = m_marks[m_at];
    State& state = node.state;
    if (!mark.any)
        return state.series == kUnknownSeries ? 0.3 : m_habits.unsignedCost(state.position);
    if (state.series == kUnknownSeries) {
        if (mark.named && mark.leaf == state.position) {
            state.series = mark.series;
            state.rank = mark.rank;
            return kNamedLate;
        }
        // A gathering of preliminaries may be signed with the leaves' numbers alone.
        if (!mark.named && mark.leaf == state.position)
            return kUnnamedMark;
        return m_habits.hasMarks() ? kMissignedGathering : 0.0;
    }
    const bool sameLeaf = mark.leaf == state.position;
    const bool sameGathering =
        !mark.named || (mark.series == state.series && mark.rank == state.rank);
    if (sameLeaf && sameGathering)
        return m_habits.signedCost(state.position);
    node.arrival.missigned = true;
    return sameGathering ? kMissignedLeaf : sameLeaf ? kMissignedGathering : kMissignedBoth;
}

void Storyteller::keep(const Node& node, double cost) {
    if (cost > m_best + kBeamDepth)
        return;
    m_best = std::min(m_best, cost);
    const auto [found, fresh] = m_index.try_emplace(node.state, m_next.size());
    if (fresh)
        m_next.push_back(node);
    else if (m_next[found->second].cost <= cost)
        return;
    m_next[found->second] = node;
    m_next[found->second].cost = cost;
}

void Storyteller::prune() {
    std::ranges::sort(m_next, {}, &Node::cost);
    while (m_next.size() > 1 && (m_next.size() > kBeam || m_next.back().cost > m_best + kBeamDepth))
        m_next.pop_back();
    m_layers[m_at] = m_next;
}

std::vector<StoryLeaf> Storyteller::traceBack() const {
    std::vector<StoryLeaf> story(m_layers.size());
    std::size_t index = 0;
    double least = std::numeric_limits<double>::max();
    for (std::size_t at = 0; !m_layers.empty() && at < m_layers.back().size(); ++at) {
        const Node& node = m_layers.back()[at];
        const double fold =
            node.state.series == kUnknownSeries ? 0.5 : m_habits.foldCost(node.state.position);
        if (node.cost + std::min(fold, 1.0) < least) {
            least = node.cost + std::min(fold, 1.0);
            index = at;
        }
    }
    for (std::size_t at = m_layers.size(); at-- > 0;) {
        const Node& node = m_layers[at][index];
        StoryLeaf& leaf = story[at];
        leaf.leaf = m_order.printed[at];
        if (node.state.series != kUnknownSeries)
            leaf.gathering = GatheringRank{m_series[static_cast<std::size_t>(node.state.series)],
                                           node.state.rank};
        leaf.position = m_habits.hasMarks() ? node.state.position : 0;
        if (node.state.expected != kNoNumber)
            leaf.expectedNumber = node.state.expected;
        leaf.arrival = node.arrival;
        leaf.turn = m_turns[at];
        index = node.from;
    }
    nameEarlierLeaves(story);
    return story;
}

// A mark on its second or third leaf names an unsigned gathering from its beginning.
void Storyteller::nameEarlierLeaves(std::vector<StoryLeaf>& story) {
    for (std::size_t at = story.size(); at-- > 1;) {
        StoryLeaf& before = story[at - 1];
        const StoryLeaf& leaf = story[at];
        if (leaf.gathering && !before.gathering && leaf.arrival.turn == Turn::sameGathering)
            before.gathering = leaf.gathering;
    }
}

std::vector<StoryLeaf> tellStory(const BoundBook& book, const LeafOrder& order,
                                 const LeafLinks& links, const BookHabits& habits) {
    return Storyteller(book, order, links, habits).tell();
}

} // namespace headcap::core
