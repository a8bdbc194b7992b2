// Leaves bound in the wrong order, and the fewest runs of them that must be moved to put them
// right: the longest part that already stands in order stays, everything else moves once.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/collation/leaf_places.h"

namespace headcap::core {

// Leaves `first` to `last` of the book, which stand together, go after leaf `after`.
struct LeafMove {
    std::size_t first = 0;
    std::size_t last = 0;
    std::optional<std::size_t> after; // none: to the very beginning
    friend bool operator==(const LeafMove&, const LeafMove&) = default;
};

// `bound`: the leaves as they stand, each once, by their index in the book; leaves that lack are
// left out. A move may name a leaf that is itself moved: made in the order given, they put all
// right. Of two ways as short, the one that moves leaves said to be `misplaced`.
[[nodiscard]] std::vector<LeafMove> movesToOrder(const std::vector<std::size_t>& bound,
                                                 const std::vector<std::size_t>& misplaced = {});
// What comes of it.
[[nodiscard]] std::vector<std::size_t> moved(std::vector<std::size_t> bound, const LeafMove& move);

// "Leaves K5–K6 go after K4."
[[nodiscard]] std::string sentenceOf(const LaidBook& book, const LeafMove& move);
// "2 moves put the leaves in order: K5–K6 go after K4; then B1 goes to the beginning." Empty: none.
[[nodiscard]] std::string sentenceOf(const LaidBook& book, const std::vector<LeafMove>& moves);

} // namespace headcap::core
