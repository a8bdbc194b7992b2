// What an account of a book's leaves is made of while it is sought: where one leaf stands, and what
// each unlikely thing costs, in nats (a thing that happens once in e^cost). The costs are
// judgements of how often leaves are lost and printers slip; only their order matters much.
#pragma once

#include <cstddef>

#include "core/catchwords/leaf_story.h"

namespace headcap::core {

inline constexpr int kUnknownSeries = -1;
inline constexpr int kNoNumber = -1'000'000;

// What happens seldom, in nats.
inline constexpr double kLacking = 5.5;
inline constexpr double kLackingMore = 0.3; // for each leaf after the first
inline constexpr double kLackingMost = 8.0;
inline constexpr double kJump = 5.0;
inline constexpr double kJumpWithinLeaf = 5.6;
inline constexpr double kJumpAtUnprinted =
    0.8; // blanks and plates are numbered or not, as it pleases
inline constexpr double kRestart = 2.0;
inline constexpr double kFirstNumber = 0.5;
inline constexpr double kNewStyle = 1.0;
inline constexpr double kMisprint = 3.5;
inline constexpr double kWrongReckoning = 1.5; // a number supplied in brackets that does not fit
inline constexpr double kMissignedLeaf = 4.0;
inline constexpr double kMissignedGathering = 4.5;
inline constexpr double kMissignedBoth = 8.0;
inline constexpr double kFoldAtEnd = 1.5; // the last gathering of a series has what leaves it needs
inline constexpr double kNewSeries = 2.0;
inline constexpr double kLateSeries = 5.0; // a series that begins in its midst
inline constexpr double kNamedLate =
    3.5; // a gathering that only its third leaf or a later one names
inline constexpr double kUnnamedMark = 0.3; // a leaf's number without a letter
inline constexpr double kOutOfOrder = 7.5;
inline constexpr double kUnsigned = 3.0;

struct StoryState {
    int series = kUnknownSeries;
    int rank = 0;
    int position = 1;
    int expected = kNoNumber; // the number of this leaf's recto
    PrintedNumerals style = PrintedNumerals::arabic;

    friend bool operator==(const StoryState&, const StoryState&) = default;
};

struct StoryStateHash {
    std::size_t operator()(const StoryState& state) const {
        std::size_t hash = static_cast<std::size_t>(state.series + 2);
        for (const int part :
             {state.rank, state.position, state.expected, static_cast<int>(state.style)})
            hash = hash * 1'000'003 + static_cast<std::size_t>(part + 4'000'000);
        return hash;
    }
};

struct StoryNode {
    StoryState state;
    double cost = 0;
    std::size_t from = 0;
    Arrival arrival;
};

} // namespace headcap::core
