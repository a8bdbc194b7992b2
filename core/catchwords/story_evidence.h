// What text, numbers and folds say of one turn of the account: each may bear out a loss, speak
// against it, or say nothing.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/catchwords/book_habits.h"
#include "core/catchwords/bound_leaf.h"
#include "core/catchwords/leaf_story.h"

namespace headcap::core {

enum class Says { nothing, yes, no };

// Of the turn from leaf `at - 1` of the account to leaf `at`.
class StoryEvidence {
public:
    StoryEvidence(const BoundBook& book, const LeafOrder& order, const BookHabits& habits,
                  const std::vector<StoryLeaf>& story)
        : m_book(book), m_order(order), m_habits(habits), m_story(story) {}

    [[nodiscard]] Says textBreaks(std::size_t at) const;
    [[nodiscard]] Says numbersSkip(std::size_t at) const;
    [[nodiscard]] Says foldShort(std::size_t at) const;
    // One catchword is all there is for several leaves, or for one that numbers or fold deny.
    [[nodiscard]] bool isUnprovenLoss(std::size_t at) const;

    // Of the gathering that holds `at`, lacking leaves counted, where the next follows in order.
    [[nodiscard]] std::optional<int> closedLength(std::size_t at) const;
    // How many leaves the gathering of `at` has as it is bound, blanks among them; none after the
    // place where it is cut short on the way.
    [[nodiscard]] int boundLength(std::size_t at) const;
    // Folds give leaves two by two: where a turn breaks, an odd number says that one is short.
    [[nodiscard]] bool isOdd(std::size_t at) const;

    // Numbers or a complete fold vouch for the turn, whatever the catchword says.
    [[nodiscard]] bool isHeldTogether(std::size_t at) const;
    // The numbers run on only if unprinted leaves are counted here. In the midst of running text
    // such leaves are plates, and no printer counts them unless this book shows that he does.
    [[nodiscard]] bool isBridgedByBare(std::size_t at) const;
    // The jump of the numbers is no more than unprinted leaves between, as the book counts them.
    [[nodiscard]] bool isJumpOfBare(std::size_t at) const;
    // How many leaves the marks on both sides pass over, where neither text nor number denies it.
    [[nodiscard]] int passedOverByMarks(std::size_t at) const;
    // Something says that the leaf belongs where it stands: its text or its number.
    [[nodiscard]] bool isVouchedFor(std::size_t at) const;
    // Somebody read on over the turn, and says that the text breaks: that is no printer's slip.
    [[nodiscard]] bool isReadAcross(std::size_t at) const;
    // The leaf does not follow the one before it as bound: it has a finding of its own already.
    [[nodiscard]] bool wasMoved(std::size_t at) const;

private:
    [[nodiscard]] const BoundLeaf& bound(std::size_t at) const {
        return m_book.leaves[m_story[at].leaf];
    }
    [[nodiscard]] int unit() const { return m_book.numbering == Numbering::leaves ? 1 : 2; }
    [[nodiscard]] bool numberHolds(std::size_t at) const;
    [[nodiscard]] bool markSkips(std::size_t at) const;

    const BoundBook& m_book;
    const LeafOrder& m_order;
    const BookHabits& m_habits;
    const std::vector<StoryLeaf>& m_story;
};

// The account without the losses that it only supposes.
[[nodiscard]] std::vector<StoryLeaf> withoutUnprovenLosses(const BoundBook& book,
                                                           const LeafOrder& order,
                                                           const BookHabits& habits,
                                                           std::vector<StoryLeaf> story);

} // namespace headcap::core
