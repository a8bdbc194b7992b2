#include <algorithm>

#include "core/catchwords/storyteller.h"

namespace headcap::core {
namespace {

constexpr int kMostLacking = 6;
constexpr int kMostUnprinted = 4;
constexpr int kLookAhead = 3;

} // namespace

void Storyteller::begin() {
    const int bare = m_order.unprintedBefore[0];
    Node start;
    for (int counted = 0; counted <= std::min(bare, kMostUnprinted); ++counted) {
        start.state.position = 1 + counted;
        start.arrival = {.turn = Turn::unsignedGathering, .countedAfter = counted};
        emit(start, m_habits.bareCost(bare, counted));
        beginSeries(start, 0.0, counted, 0);
    }
}

void Storyteller::advance() {
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
void Storyteller::leave(int counted, double cost) {
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

double Storyteller::lackingCost(int leaves) {
    return std::min(kLackingMost, kLacking + kLackingMore * (leaves - 1));
}

Storyteller::Node Storyteller::step(int counted, int lacking) const {
    Node next = *m_node;
    next.from = m_from;
    next.arrival = {};
    if (next.state.expected != kNoNumber)
        next.state.expected += m_unit * (1 + counted + lacking);
    return next;
}

void Storyteller::stay(int counted, int lacking, double cost) {
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

void Storyteller::turnOver(int counted, double cost) {
    if (!m_habits.hasMarks() || m_node->state.series == kUnknownSeries)
        return;
    for (int before = 0; before <= counted; ++before)
        enterNext(before, counted - before, 0, 0, 0,
                  cost + m_habits.foldCost(m_node->state.position + before));
}

void Storyteller::loseAtTurn(int counted, double cost) {
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

void Storyteller::enterNext(int countedBefore, int countedAfter, int lackingBefore,
                            int lackingAfter, int gatherings, double cost) {
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
void Storyteller::breakOff(int counted, double cost) {
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
void Storyteller::beginSeries(Node next, double cost, int counted, int before) {
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
        const double order = sameSeries ? kOutOfOrder : mark.rank <= 2 ? kNewSeries : kLateSeries;
        emit(next, cost + (m_at == 0 ? 0.5 : order) + (lacking > 0 ? lackingCost(lacking) : 0));
        return;
    }
}

} // namespace headcap::core
