#include "core/catchwords/leaf_neighbours.h"

namespace headcap::core {
namespace {

constexpr double kNumberBreak = 4.0;
constexpr double kMarkBreak = 3.0;

} // namespace

bool LeafNeighbours::agree(std::size_t at, std::size_t next) {
    const Neighbours& found = neighbours(at, next);
    return found.textAgrees || found.numbersAgree;
}

const LeafNeighbours::Neighbours& LeafNeighbours::neighbours(std::size_t at, std::size_t next) {
    const std::uint64_t key =
        (static_cast<std::uint64_t>(m_order.printed[at]) << 32) | m_order.printed[next];
    const auto [found, fresh] = m_neighbours.try_emplace(key);
    if (fresh)
        found->second = weigh(at, next);
    return found->second;
}

LeafNeighbours::Neighbours LeafNeighbours::weigh(std::size_t at, std::size_t next) const {
    const auto turn = m_links.between(m_order.printed[at], m_order.printed[next]);
    const auto number = numberOf(at);
    const auto following = numberOf(next);
    const int jump = number && following ? *following - *number - m_unit : 0;
    Neighbours found;
    found.textAgrees = turn && turn->verdict <= CatchwordVerdict::variant;
    found.numbersAgree = number && following && jump == 0;
    found.cost = (turn ? m_links.costIfRunsOn(turn) : 0.5) + markBreak(at, next);
    if (jump != 0)
        found.cost += numberBreak(next, jump);
    return found;
}

std::optional<int> LeafNeighbours::numberOf(std::size_t at) const {
    const auto& numbers = m_book.leaves[m_order.printed[at]].numbers;
    if (numbers[0])
        return numbers[0]->value;
    if (numbers[1])
        return numbers[1]->value - (m_unit == 2 ? 1 : 0);
    return std::nullopt;
}

double LeafNeighbours::numberBreak(std::size_t next, int jump) const {
    const int bare = m_order.unprintedBefore[next];
    return bare > 0 && jump > 0 && jump <= bare * m_unit ? 0.5 : kNumberBreak;
}

double LeafNeighbours::markBreak(std::size_t at, std::size_t next) const {
    const auto& mark = m_book.leaves[m_order.printed[at]].mark;
    const auto& following = m_book.leaves[m_order.printed[next]].mark;
    if (!following || !following->gathering)
        return 0;
    if (!mark || !mark->gathering)
        return following->leaf > 2 && following->leaf < 5 ? 1.0 : 0.0;
    const bool runsOn = mark->gathering == following->gathering ? following->leaf == mark->leaf + 1
                                                                : following->leaf == 1;
    return runsOn ? 0 : kMarkBreak;
}

} // namespace headcap::core
