// What should be on a leaf, for somebody with the book in hand: its reference, the mark at its
// foot, the numbers of its two sides, where it stands in its gathering and what it hangs with.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "core/collation/folds.h"
#include "core/collation/leaf_places.h"

namespace headcap::core {

struct LeafExpectation {
    std::string ref;       // "K5"
    std::string gathering; // "K"
    int place = 1;         // among the leaves of its gathering, from 1
    int leaves = 0;        // of the gathering
    std::string mark;      // at the foot of the recto: "K5"; empty: none is looked for
    std::string recto;     // "9", "[2]" where it belongs but is not printed; empty: none
    std::string verso;
    bool isFolio = false; // the number counts the leaf
    bool isBlank = false;
    bool opensGathering = false;
    bool closesGathering = false;
    std::string conjugate;          // the other half of its fold: "K4"; empty: none, or not known
    bool isMiddle = false;          // beside the gathering's middle fold
    std::vector<std::string> sheet; // the other leaves of its sheet
};

// Printers sign the first half of a gathering's leaves as a rule; a mark on a later leaf is not
// looked for (common practice; Gaskell). Unsigned leaves bear none.
[[nodiscard]] LeafExpectation expectationAt(const LaidBook& book, std::string_view format,
                                            std::size_t leaf);

// The leaves of the gathering that `leaf` is in, from it to the last before the next gathering
// begins.
[[nodiscard]] std::size_t lastOfGathering(const LaidBook& book, std::size_t leaf);
[[nodiscard]] std::size_t firstOfGathering(const LaidBook& book, std::size_t leaf);

} // namespace headcap::core
