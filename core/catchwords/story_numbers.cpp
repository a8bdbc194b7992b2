#include "core/catchwords/story_numbers.h"

#include <algorithm>
#include <cstdlib>

namespace headcap::core {
namespace {

constexpr int kFirstPages = 3; // a sequence begins with one of these

void keep(NumberReadings& found, const StoryNode& node, double cost) {
    found.readings[found.count++] = {node, cost};
}

} // namespace

NumberReadings NumberReader::read(const StoryNode& node) const {
    NumberReadings found;
    if (!m_numbers[0] && !m_numbers[1]) {
        keep(found, node, 0);
        return found;
    }
    if (node.state.expected == kNoNumber) {
        adopt(found, node, kFirstNumber, m_numbers[0] ? 0 : 1);
        return found;
    }
    StoryNode kept = node;
    const double wrong = misprints(kept);
    keep(found, kept, wrong);
    if (wrong == 0)
        return found;
    if (misses(node.state, 0))
        adopt(found, node, jumpCost(node, 0), 0);
    if (misses(node.state, 1)) {
        adopt(found, node, jumpCost(node, 1), 1);
        if (m_numbers[0] && !misses(node.state, 0))
            adoptWithin(found, node);
    }
    return found;
}

bool NumberReader::misses(const StoryState& state, std::size_t page) const {
    const auto& number = m_numbers[page];
    return number && (number->style != state.style || number->value != state.expected + side(page));
}

double NumberReader::misprints(StoryNode& node) const {
    double cost = 0;
    for (std::size_t page = 0; page < 2; ++page) {
        node.arrival.misprinted[page] = misses(node.state, page);
        if (node.arrival.misprinted[page])
            cost += m_numbers[page]->supplied ? kWrongReckoning : kMisprint;
    }
    return cost;
}

double NumberReader::jumpCost(const StoryNode& node, std::size_t page) const {
    const NumberOnPage& number = *m_numbers[page];
    if (number.style != node.state.style)
        return kNewStyle;
    const int jump = number.value - side(page) - node.state.expected;
    if (m_bare > 0 && jump % m_unit == 0 && std::abs(jump) <= m_bare * m_unit)
        return std::min(kJump, kJumpAtUnprinted + m_habits.bareCost(m_bare, jump > 0 ? m_bare : 0));
    const bool opens = node.arrival.turn != Turn::sameGathering;
    return number.value <= kFirstPages && opens ? kRestart : kJump;
}

void NumberReader::adopt(NumberReadings& found, StoryNode node, double cost,
                         std::size_t page) const {
    const NumberOnPage& number = *m_numbers[page];
    const int expected = number.value - side(page);
    if (node.state.expected != kNoNumber) {
        node.arrival.numberJump = expected - node.state.expected;
        node.arrival.numbersRestart =
            number.style != node.state.style || number.value <= kFirstPages;
    }
    node.state.expected = expected;
    node.state.style = number.style;
    const double wrong = misprints(node);
    keep(found, node, cost + wrong);
}

void NumberReader::adoptWithin(NumberReadings& found, StoryNode node) const {
    const int expected = m_numbers[1]->value - side(1);
    node.arrival.numberJump = expected - node.state.expected;
    node.arrival.jumpWithinLeaf = true;
    node.state.expected = expected;
    keep(found, node, kJumpWithinLeaf);
}

} // namespace headcap::core
