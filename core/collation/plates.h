// Plates called for: each with the place where it belongs ("to face p. 34", a binder's direction, a
// published list) and whether this copy has it. Plates are no part of the signatures.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "core/collation/leaf_places.h"
#include "core/collation/leaf_ref.h"
#include "core/values/text_error.h"

namespace headcap::core {

enum class PlatePlacing : unsigned char {
    unplaced,
    facing,       // a page or a leaf's side
    before,       // a leaf
    after,        // a leaf
    frontispiece, // facing the title
    atEnd,
};

struct PlatePlace {
    PlatePlacing placing = PlatePlacing::unplaced;
    std::optional<LeafRef> where; // of facing, before and after
    friend bool operator==(const PlatePlace&, const PlatePlace&) = default;
};

struct PlateCalled {
    std::string label; // "7", "XII"; as in PlateRef
    PlatePlace place;
    std::string source; // the binder's direction, the published list
    bool folded = false;
    bool present = false;
};

// "to face p. 34", "facing C4v", "after C4", "before B1", "frontispiece", "at end".
[[nodiscard]] tl::expected<PlatePlace, TextError> parsePlatePlace(std::string_view text);
[[nodiscard]] std::string toText(const PlatePlace& place);

enum class PlateProblem : unsigned char {
    placeNotInBook, // its page or leaf is not in the make-up, or is not certain
    labelTwice,
    outOfOrder, // it belongs before the plate listed ahead of it
    unplaced,
    lacking,
};

struct PlateFinding {
    std::size_t plate = 0; // index in the list
    PlateProblem problem = PlateProblem::lacking;
    std::optional<PlaceProblem> why; // of placeNotInBook
    friend bool operator==(const PlateFinding&, const PlateFinding&) = default;
};

struct PlateCheck {
    int called = 0;
    int present = 0;
    std::vector<PlateFinding> findings;
};

[[nodiscard]] PlateCheck checkPlates(const LaidBook& book, const std::vector<PlateCalled>& plates);

} // namespace headcap::core
