#include "core/catchwords/leaf_story.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <unordered_map>

#include "core/catchwords/story_numbers.h"
#include "core/catchwords/story_state.h"

namespace headcap::core {
namespace {

constexpr int kMostLacking = 6;
constexpr int kMostUnprinted = 4;
constexpr int kLookAhead = 3;
constexpr std::size_t kBeam = 36;
constexpr double kBeamDepth = 14.0;

using State = StoryState;
using Node = StoryNode;

class Storyteller {
public:
    Storyteller(const BoundBook& book, const LeafOrder& order, const LeafLinks& links,
                const BookHabits& habits)
        : m_book(book), m_order(order), m_links(links), m_habits(habits),
          m_unit(book.numbering == Numbering::leaves ? 1 : 2) {
        for (const std::size_t leaf : order.printed)
            m_marks.push_back(intern(book.leaves[leaf].mark));
    }

    std::vector<StoryLeaf> tell() {
        const std::size_t count = m_order.printed.size();
        m_layers.resize(count);
        m_turns.resize(count);
        for (std::size_t at = 0; at < count; ++at) {
            m_at = at;
            m_turns[at] = at > 0 ? m_links.between(m_order.printed[at - 1], m_order.printed[at])
                                 : std::nullopt;
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

private:
    struct Mark {
        bool any = false;
        bool named = false;
        int series = kUnknownSeries;
        int rank = 0;
        int leaf = 0;
    };

    Mark intern(const std::optional<PrintedMark>& mark) {
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

    void begin() {
        const int bare = m_order.unprintedBefore[0];
        Node start;
        for (int counted = 0; counted <= std::min(bare, kMostUnprinted); ++counted) {
            start.state.position = 1 + counted;
            start.arrival = {.turn = Turn::unsignedGathering, .countedAfter = counted};
            emit(start, m_habits.bareCost(bare, counted));
            beginSeries(start, 0.0, counted, 0);
        }
    }

    void advance() {
        const auto& before = m_layers[m_at - 1];
        for (std::size_t from = 0; from < before.size(); ++from) {
            m_from = from;
            m_node = &before[from];
            const int bare = m_order.unprintedBefore[m_at];
            for (int counted = 0; counted <= std::min(bare, kMostUnprinted); ++counted)
                leave(counted, m_habits.bareCost(bare, counted));
            if (bare > kMostUnprinted)
                leave(bare, m_habits.bareCost(bare, bare));
        }
    }

    // All ways from one account of the leaf before to this leaf, so many bare leaves counted.
    void leave(int counted, double cost) {
        const double whole = m_node->cost + cost + m_links.costIfRunsOn(m_turns[m_at]);
        const double broken = m_node->cost + cost + m_links.costIfBroken(m_turns[m_at]);
        stay(counted, 0, whole);
        turnOver(counted, whole);
        breakOff(counted, std::min(whole, broken + 1.0));
        if (broken + kLacking > m_best + kBeamDepth)
            return;
        for (int lacking = 1; lacking <= kMostLacking; ++lacking)
            stay(counted, lacking, broken + lackingCost(lacking));
        loseAtTurn(counted, broken);
    }

    static double lackingCost(int leaves) {
        return std::min(kLackingMost, kLacking + kLackingMore * (leaves - 1));
    }

    Node step(int counted, int lacking) const {
        Node next = *m_node;
        next.from = m_from;
        next.arrival = {};
        if (next.state.expected != kNoNumber)
            next.state.expected += m_unit * (1 + counted + lacking);
        return next;
    }

    void stay(int counted, int lacking, double cost) {
        Node next = step(counted, lacking);
        next.arrival.lackingAfter = lacking;
        next.arrival.countedAfter = counted;
        if (m_habits.hasMarks()) {
            next.state.position += 1 + counted + lacking;
            if (next.state.position > kMostLeavesInGathering && next.state.series != kUnknownSeries)
                return;
        }
        emit(next, cost);
    }

    void turnOver(int counted, double cost) {
        if (!m_habits.hasMarks() || m_node->state.series == kUnknownSeries)
            return;
        for (int before = 0; before <= counted; ++before)
            enterNext(before, counted - before, 0, 0, 0,
                      cost + m_habits.foldCost(m_node->state.position + before));
    }

    void loseAtTurn(int counted, double cost) {
        if (!m_habits.hasMarks() || m_node->state.series == kUnknownSeries)
            return;
        for (const int fold : m_habits.usualFolds()) {
            const int rest = fold - m_node->state.position - counted;
            if (rest < 0)
                continue;
            const double folded = cost + m_habits.foldCost(fold);
            for (int after = rest == 0 ? 1 : 0; after <= 4 && rest + after <= fold; ++after)
                enterNext(counted, 0, rest, after, 0, folded + lackingCost(rest + after));
            if (rest == 0) {
                enterNext(counted, 0, fold, 0, 1, folded + lackingCost(fold));
                enterNext(counted, 0, 2 * fold, 0, 2, folded + kLackingMost + 1);
            }
        }
    }

    void enterNext(int countedBefore, int countedAfter, int lackingBefore, int lackingAfter,
                   int gatherings, double cost) {
        const int rank = m_node->state.rank / 2 * 2;
        Node next = step(countedBefore + countedAfter, lackingBefore + lackingAfter);
        next.state.rank = rank + 2 * (1 + gatherings);
        // W stands between V and X where the printer has it; only the mark can tell.
        const Mark& mark = m_marks[m_at];
        if (mark.named && mark.series == next.state.series && mark.rank > m_node->state.rank &&
            mark.rank < next.state.rank && mark.rank % 2 == 1)
            next.state.rank = mark.rank;
        next.state.position = 1 + countedAfter + lackingAfter;
        next.arrival = {.turn = Turn::nextGathering,
                        .lackingBefore = lackingBefore,
                        .lackingAfter = lackingAfter,
                        .countedBefore = countedBefore,
                        .countedAfter = countedAfter,
                        .gatheringsLacking = gatherings};
        emit(next, cost);
    }

    // The order ends here: another series begins, or an unsigned gathering.
    void breakOff(int counted, double cost) {
        if (!m_habits.hasMarks())
            return;
        const bool unknown = m_node->state.series == kUnknownSeries;
        for (int before = 0; before <= counted; ++before) {
            const double fold = m_habits.foldCost(m_node->state.position + before);
            const double closed = cost + (unknown ? 0.5 : std::min(fold, kFoldAtEnd));
            Node next = step(counted, 0);
            next.arrival.countedBefore = before;
            next.arrival.countedAfter = counted - before;
            beginSeries(next, closed, counted - before, before);
            if (!unknown) {
                next.state.series = kUnknownSeries;
                next.state.rank = 0;
                next.state.position = 1 + counted - before;
                next.arrival.turn = Turn::unsignedGathering;
                emit(next, closed + kUnsigned);
            }
        }
    }

    // Enters the gathering that a mark on this leaf or one of the next names.
    void beginSeries(Node next, double cost, int counted, int before) {
        const State came = next.state;
        for (std::size_t ahead = 0; ahead <= kLookAhead; ++ahead) {
            if (m_at + ahead >= m_marks.size())
                return;
            const Mark& mark = m_marks[m_at + ahead];
            if (!mark.named)
                continue;
            const int position = mark.leaf - static_cast<int>(ahead);
            const int lacking = position - 1 - counted;
            if (position < 1 || lacking > kMostLacking || (lacking < 0))
                continue;
            const bool sameSeries = m_at > 0 && mark.series == came.series;
            next.state = came;
            if (sameSeries && mark.rank == came.rank)
                continue;
            next.state.series = mark.series;
            next.state.rank = mark.rank;
            next.state.position = position;
            if (next.state.expected != kNoNumber)
                next.state.expected += m_unit * lacking;
            next.arrival = {.turn = Turn::newSeries,
                            .lackingAfter = lacking,
                            .countedBefore = before,
                            .countedAfter = counted};
            const double order = sameSeries       ? kOutOfOrder
                                 : mark.rank <= 2 ? kNewSeries
                                                  : kLateSeries;
            emit(next, cost + (m_at == 0 ? 0.5 : order) + (lacking > 0 ? lackingCost(lacking) : 0));
            return;
        }
    }

    // What the leaf itself shows against what the account wants of it.
    void emit(Node node, double cost) {
        cost += markCost(node);
        if (cost > m_best + kBeamDepth)
            return;
        const NumberReader numbers(m_book.leaves[m_order.printed[m_at]],
                                   m_order.unprintedBefore[m_at], m_unit, m_habits);
        const NumberReadings found = numbers.read(node);
        for (std::size_t reading = 0; reading < found.count; ++reading)
            keep(found.readings[reading].node, cost + found.readings[reading].cost);
    }

    double markCost(Node& node) const {
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

    void keep(const Node& node, double cost) {
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

    void prune() {
        std::ranges::sort(m_next, {}, &Node::cost);
        while (m_next.size() > 1 &&
               (m_next.size() > kBeam || m_next.back().cost > m_best + kBeamDepth))
            m_next.pop_back();
        m_layers[m_at] = m_next;
    }

    std::vector<StoryLeaf> traceBack() const {
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
                leaf.gathering = GatheringRank{
                    m_series[static_cast<std::size_t>(node.state.series)], node.state.rank};
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
    static void nameEarlierLeaves(std::vector<StoryLeaf>& story) {
        for (std::size_t at = story.size(); at-- > 1;) {
            StoryLeaf& before = story[at - 1];
            const StoryLeaf& leaf = story[at];
            if (leaf.gathering && !before.gathering && leaf.arrival.turn == Turn::sameGathering)
                before.gathering = leaf.gathering;
        }
    }

    const BoundBook& m_book;
    const LeafOrder& m_order;
    const LeafLinks& m_links;
    const BookHabits& m_habits;
    int m_unit;
    std::vector<std::string> m_series;
    std::vector<Mark> m_marks;
    std::vector<TurnEvidence> m_turns;
    std::vector<std::vector<Node>> m_layers;

    std::size_t m_at = 0;
    std::size_t m_from = 0;
    const Node* m_node = nullptr;
    std::vector<Node> m_next;
    std::unordered_map<State, std::size_t, StoryStateHash> m_index;
    double m_best = 0;
};

} // namespace

std::vector<StoryLeaf> tellStory(const BoundBook& book, const LeafOrder& order,
                                 const LeafLinks& links, const BookHabits& habits) {
    return Storyteller(book, order, links, habits).tell();
}

} // namespace headcap::core
