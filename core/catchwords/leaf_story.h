// The least surprising account of a book's leaves: where each stands in its gathering, what number
// it should bear, and what lies between two of them: the text runs on, leaves lack, the numbers
// jump, a new series begins. Catchwords, marks with the folds they imply, and numbers are weighed
// together, in nats, over all accounts (a beam along the leaves: time grows with the leaves alone).
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "core/catchwords/book_habits.h"
#include "core/catchwords/bound_leaf.h"
#include "core/catchwords/leaf_links.h"

namespace headcap::core {

enum class Turn {
    sameGathering,
    nextGathering,
    newSeries, // another alphabet or sign begins, or the order breaks off
    unsignedGathering,
};

// How a leaf is reached from the one before it.
struct Arrival {
    Turn turn = Turn::sameGathering;
    int lackingBefore = 0; // leaves lacking at the end of the gathering before
    int lackingAfter = 0;  // and of the leaf's own gathering before it
    int countedBefore = 0; // unprinted leaves between, of the gathering before
    int countedAfter = 0;  // and of its own
    int gatheringsLacking = 0;
    int numberJump = 0; // by how much the numbers run ahead of the leaves
    bool jumpWithinLeaf = false;
    bool numbersRestart = false;
    std::array<bool, 2> misprinted{}; // the number of recto, verso
    bool missigned = false;

    [[nodiscard]] int lacking() const { return lackingBefore + lackingAfter; }
};

struct StoryLeaf {
    std::size_t leaf = 0; // in book.leaves
    std::optional<GatheringRank> gathering;
    int position = 0;                  // in the gathering, from 1; 0 where no marks tell
    std::optional<int> expectedNumber; // of the recto, after the arrival
    Arrival arrival;
    TurnEvidence turn; // the text from the leaf before
};

[[nodiscard]] std::vector<StoryLeaf> tellStory(const BoundBook& book, const LeafOrder& order,
                                               const LeafLinks& links, const BookHabits& habits);

} // namespace headcap::core
