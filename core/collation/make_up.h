// The make-up of a book: its gatherings in order, and from them every leaf with its conjugate.
// Gatherings say what the formula says, no more; leaves are worked out from them. Leaves count from
// 1 within their gathering, as the binder points at them: cancelling A4 does not rename A5.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/collation/leaf_ref.h"
#include "core/collation/signature.h"

namespace headcap::core {

// Leaves put in after one of a gathering's own: A4+1 (one), A4+1.2 (two conjugate), A4+1,2 (two
// singletons).
struct AddedLeaves {
    int after = 0; // 0: after the gathering's last leaf
    int count = 1;
    bool conjugate = false;
    friend bool operator==(const AddedLeaves&, const AddedLeaves&) = default;
};

// Where a whole gathering is inserted in another.
struct Inside {
    std::size_t host = 0; // its index in the make-up, always before the inserted one
    int after = 0;        // 0: after the host's last leaf
    friend bool operator==(const Inside&, const Inside&) = default;
};

struct Gathering {
    Signature signature;
    int called = 0;             // leaves folded into it; 0 while nothing says how many
    std::vector<int> only;      // where just these of its leaves are described (P4–8)
    bool singletons = false;    // its leaves are not conjugate (π1,2)
    std::vector<int> cancelled; // taken out: no part of the ideal copy
    std::vector<int> lacking;   // belong to the ideal copy, and this copy lacks them
    std::vector<int> replaced;  // cancelled and replaced (±)
    std::vector<int> blank;
    std::vector<AddedLeaves> added;
    std::optional<Inside> inside;
    int part = 0; // volumes, part-books, independent sets: 0, 1, 2…

    friend bool operator==(const Gathering&, const Gathering&) = default;
};

struct MakeUp {
    std::vector<Gathering> gatherings;
    bool continues = false; // a fragment: more leaves followed

    friend bool operator==(const MakeUp&, const MakeUp&) = default;
};

// One leaf of the ideal copy.
struct Leaf {
    std::size_t gathering = 0; // index in the make-up
    int position = 1;          // its number in the gathering; of an added leaf, the one it follows
    int added = 0;             // 1 in A4+1
    std::optional<std::size_t> conjugate; // index among the leaves
    bool lacking = false;
    bool replaced = false;
    bool blank = false;
    friend bool operator==(const Leaf&, const Leaf&) = default;
};

// In the order of the book, inserted gatherings in their places. Gatherings of unknown size give
// none of their leaves.
[[nodiscard]] std::vector<Leaf> leavesOf(const MakeUp& makeUp);

// How many leaves of the ideal copy stand in it, added leaves with it, inserted gatherings without;
// none while unknown.
[[nodiscard]] std::optional<int> idealLeaves(const Gathering& gathering);
[[nodiscard]] int lackingLeaves(const Gathering& gathering);

struct LeafTally {
    int known = 0;   // leaves of gatherings whose size is known
    int unknown = 0; // gatherings whose size is not
    int lacking = 0; // of the known leaves, those this copy lacks
    int blank = 0;   // of the known leaves, those said to be blank

    [[nodiscard]] bool complete() const { return unknown == 0; }
};
[[nodiscard]] LeafTally tally(const MakeUp& makeUp);

// The reference of a leaf: "A4", "A4+1".
[[nodiscard]] SignedLeaf refOf(const MakeUp& makeUp, const Leaf& leaf);

} // namespace headcap::core
