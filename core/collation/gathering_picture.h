// What the drawing of a gathering shows: its leaves in order, which are two halves of one fold, and
// what the record says of each. The same for screen and paper.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/collation/collation_record.h"
#include "core/collation/make_up.h"
#include "core/facsimile/facsimile.h"

namespace headcap::core {

enum class LeafState {
    present,
    lacking,
    loose,    // in the book, but not held by its fold
    misbound, // in the book, not where it belongs
    facsimile,
    supplied,  // an original leaf from another copy
    cancelled, // taken out by the printer: a stub
};

struct PicturedLeaf {
    std::string ref; // "K2"
    LeafState state = LeafState::present;
    std::optional<std::size_t> conjugate{}; // index in the same gathering
    bool isBlank = false;
};

struct PicturedGathering {
    std::string signature; // "K"
    std::vector<PicturedLeaf> leaves;

    [[nodiscard]] bool isWhole() const; // every leaf as it should be
};

// A later word on a leaf wins over an earlier one; what a facsimile supplies is no longer lacking.
[[nodiscard]] std::vector<PicturedGathering>
picturesOf(const MakeUp& makeUp, const std::vector<CollationFinding>& findings,
           const std::vector<Facsimile>& facsimiles);

} // namespace headcap::core
