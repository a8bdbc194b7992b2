// Places in one book: what a leaf reference or a set of them comes to in its make-up, and the same
// place in another form (signature, page, folio). A reference that fits two places is never
// resolved by guessing.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "core/collation/leaf_ref.h"
#include "core/collation/make_up.h"
#include "core/collation/numbering.h"

namespace headcap::core {

// A make-up with its leaves and their numbers worked out once.
struct LaidBook {
    MakeUp makeUp;
    std::vector<Leaf> leaves;
    std::vector<LeafNumbers> numbers; // one a leaf
    std::vector<std::string> plates;  // labels of the plates called for, as in PlateRef
};

// With no numbers known.
[[nodiscard]] LaidBook layBook(MakeUp makeUp);

struct LeafPlace {
    std::size_t leaf = 0; // index among the leaves
    Side side = Side::both;
    friend bool operator==(const LeafPlace&, const LeafPlace&) = default;
};

enum class PlaceProblem : unsigned char {
    noSuchGathering,
    noSuchLeaf,    // the gathering has not so many leaves
    cancelled,     // the formula takes that leaf out
    sizeUnknown,   // nothing says how many leaves the gathering has
    noSuchNumber,  // no page or leaf bears it
    severalPlaces, // two gatherings are signed so, or two pages numbered so
    noSuchPlate,
    backwards, // a range whose end comes first
    notALeaf,  // a plate, where a leaf is asked for
};

struct PlaceError {
    PlaceProblem problem = PlaceProblem::noSuchLeaf;
    std::size_t item = 0;              // of a set, which item
    std::vector<LeafPlace> candidates; // of severalPlaces
};

[[nodiscard]] tl::expected<LeafPlace, PlaceError> locate(const LaidBook& book, const LeafRef& ref);

// A set worked out: the leaves it names, each once and in order, and what has no place in the book.
struct LocatedSet {
    std::vector<std::size_t> leaves;
    std::vector<std::string> plates;
    int leavesUnplaced = 0;
    int platesUnplaced = 0;
    int gatheringsUnplaced = 0;
};
[[nodiscard]] tl::expected<LocatedSet, PlaceError> locate(const LaidBook& book, const LeafSet& set);

// The same place by signature; always there is one.
[[nodiscard]] LeafRef asSigned(const LaidBook& book, const LeafPlace& place);
// By page: of a whole leaf its recto's, or its verso's where only that is numbered.
[[nodiscard]] std::optional<LeafRef> asPage(const LaidBook& book, const LeafPlace& place);
[[nodiscard]] std::optional<LeafRef> asFolio(const LaidBook& book, const LeafPlace& place);

// The shortest set that names just these leaves: whole gatherings, ranges, single leaves.
[[nodiscard]] LeafSet toLeafSet(const LaidBook& book, std::vector<std::size_t> leaves);

} // namespace headcap::core
