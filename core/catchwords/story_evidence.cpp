#include "core/catchwords/story_evidence.h"

#include <algorithm>
#include <cstdlib>

namespace headcap::core {
namespace {

using Verdict = CatchwordVerdict;

constexpr double kAgainstHabit = 2.5;

} // namespace

Says StoryEvidence::textBreaks(std::size_t at) const {
    const auto& turn = m_story[at].turn;
    if (!turn || turn->verdict == Verdict::doubtful)
        return Says::nothing;
    return turn->verdict == Verdict::different ? Says::yes : Says::no;
}

// A number read on the leaf, as expected there.
bool StoryEvidence::numberHolds(std::size_t at) const {
    const auto& numbers = bound(at).numbers;
    const auto& arrival = m_story[at].arrival;
    return (numbers[0] && !arrival.misprinted[0]) || (numbers[1] && !arrival.misprinted[1]);
}

Says StoryEvidence::numbersSkip(std::size_t at) const {
    if (m_story[at].arrival.numberJump != 0)
        return Says::no;
    constexpr std::size_t kNear = 4;
    bool before = false;
    bool after = false;
    for (std::size_t near = 1; near <= kNear && near <= at; ++near)
        before = before || numberHolds(at - near);
    for (std::size_t near = at; near < m_story.size() && near < at + kNear; ++near) {
        if (near > at && m_story[near].arrival.numberJump != 0)
            break;
        after = after || numberHolds(near);
    }
    return before && after ? Says::yes : Says::nothing;
}

Says StoryEvidence::foldShort(std::size_t at) const {
    const StoryLeaf& leaf = m_story[at];
    if (!leaf.gathering)
        return Says::nothing;
    if (leaf.arrival.gatheringsLacking > 0)
        return Says::yes;
    if (leaf.arrival.turn == Turn::newSeries)
        return Says::nothing;
    if (leaf.arrival.lackingBefore > 0 && leaf.arrival.lackingAfter == 0)
        return Says::yes; // the fold before was completed to its usual length
    const auto length = closedLength(at);
    if (!length)
        return markSkips(at) ? Says::yes : Says::nothing;
    return m_habits.isUsualFold(*length) ? Says::yes : Says::no;
}

bool StoryEvidence::isUnprovenLoss(std::size_t at) const {
    const int count = m_story[at].arrival.lacking();
    const Says numbers = numbersSkip(at);
    const Says fold = foldShort(at);
    const bool denied = numbers == Says::no || fold == Says::no;
    return count > 0 && textBreaks(at) == Says::yes && numbers != Says::yes && fold != Says::yes &&
           (count > 1 || denied);
}

std::optional<int> StoryEvidence::closedLength(std::size_t at) const {
    std::size_t last = at;
    while (last + 1 < m_story.size() && m_story[last + 1].arrival.turn == Turn::sameGathering)
        ++last;
    if (last + 1 >= m_story.size() || m_story[last + 1].arrival.turn != Turn::nextGathering)
        return std::nullopt;
    const Arrival& next = m_story[last + 1].arrival;
    return m_story[last].position + next.countedBefore + next.lackingBefore;
}

// Marks on both sides in one gathering count on over the place.
bool StoryEvidence::markSkips(std::size_t at) const {
    const auto& mark = bound(at).mark;
    return mark && mark->leaf > 1 && mark->leaf == m_story[at].position;
}

int StoryEvidence::boundLength(std::size_t at) const {
    std::size_t last = at;
    while (last + 1 < m_story.size() && m_story[last + 1].arrival.turn == Turn::sameGathering &&
           m_story[last + 1].arrival.lacking() == 0)
        ++last;
    const int counted = last + 1 < m_story.size() ? m_story[last + 1].arrival.countedBefore : 0;
    return m_story[last].position + counted;
}

bool StoryEvidence::isOdd(std::size_t at) const {
    const int length = boundLength(at - 1);
    return m_habits.hasMarks() && length % 2 != 0 && !m_habits.isUsualFold(length);
}

bool StoryEvidence::isHeldTogether(std::size_t at) const {
    if (bound(at - 1).printsNumber() && bound(at).printsNumber())
        return true;
    const auto length = closedLength(at - 1);
    return length && m_habits.isUsualFold(*length);
}

bool StoryEvidence::isBridgedByBare(std::size_t at) const {
    const Arrival& arrival = m_story[at].arrival;
    const int counted = arrival.countedBefore + arrival.countedAfter;
    const int bare = m_order.unprintedBefore[at];
    const bool numbersBridge = bound(at - 1).printsNumber() && bound(at).printsNumber() &&
                               (arrival.numberJump > 0 || counted > 0);
    return bare > 0 && numbersBridge && !m_habits.countsBareElsewhere();
}

bool StoryEvidence::isJumpOfBare(std::size_t at) const {
    // Blanks and plates are numbered or not, as the printer pleased.
    const int jump = m_story[at].arrival.numberJump;
    const int bare = m_order.unprintedBefore[at];
    return bare > 0 && jump % unit() == 0 && std::abs(jump) <= bare * unit() &&
           m_habits.bareCost(bare, jump > 0 ? bare : 0) < kAgainstHabit;
}

bool StoryEvidence::isVouchedFor(std::size_t at) const {
    return textBreaks(at) == Says::no || (textBreaks(at) == Says::nothing && numberHolds(at));
}

int StoryEvidence::passedOverByMarks(std::size_t at) const {
    constexpr int kMostPassedOver = 2;
    const auto& before = bound(at - 1).mark;
    const auto& after = bound(at).mark;
    const bool numbersRunOn = bound(at - 1).printsNumber() && bound(at).printsNumber();
    if (!before || !after || before->gathering != after->gathering || numbersRunOn ||
        textBreaks(at) == Says::no || m_story[at].arrival.turn != Turn::sameGathering)
        return 0;
    const int passed = after->leaf - before->leaf - 1;
    return passed <= kMostPassedOver ? std::max(passed, 0) : 0;
}

bool StoryEvidence::isReadAcross(std::size_t at) const {
    const auto& runsOn = m_book.pages[bound(at - 1).lastRow()].runsOn;
    return runsOn && !*runsOn;
}

bool StoryEvidence::wasMoved(std::size_t at) const {
    const auto bare = static_cast<std::size_t>(m_order.unprintedBefore[at]);
    return m_story[at].leaf != m_story[at - 1].leaf + 1 + bare;
}

std::vector<StoryLeaf> withoutUnprovenLosses(const BoundBook& book, const LeafOrder& order,
                                             const BookHabits& habits,
                                             std::vector<StoryLeaf> story) {
    const StoryEvidence evidence(book, order, habits, story);
    for (std::size_t at = 1; at < story.size(); ++at) {
        Arrival& arrival = story[at].arrival;
        if (arrival.turn == Turn::newSeries || !evidence.isUnprovenLoss(at))
            continue;
        const int moved = arrival.lackingAfter;
        arrival.lackingBefore = arrival.lackingAfter = 0;
        for (std::size_t next = at;
             next < story.size() && (next == at || story[next].arrival.turn == Turn::sameGathering);
             ++next)
            story[next].position -= story[next].position > 0 ? moved : 0;
    }
    return story;
}

} // namespace headcap::core
