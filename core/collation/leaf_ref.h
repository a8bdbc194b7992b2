// How people point into a book: one place (`K5r`, `π2v`, `f. 112v`, `p. 223`, `pl. 7`) and a set of
// them (`B2, C1–C4, 3 plates, gathering E`). Read and printed without knowing the book; what a
// place comes to in a given book is asked of its make-up (leaf_places.h). Printing and reading
// again gives the same value.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include <tl/expected.hpp>

#include "core/collation/printed_number.h"
#include "core/collation/signature.h"
#include "core/values/text_error.h"

namespace headcap::core {

enum class Side : unsigned char { both, recto, verso };

struct SignedLeaf {
    Signature signature;
    int leaf = 1;
    int added = 0; // 1 in A4+1: the first leaf put in after A4
    Side side = Side::both;
    friend bool operator==(const SignedLeaf&, const SignedLeaf&) = default;
};

struct FolioRef {
    FolioNumber folio;
    Side side = Side::both;
    friend bool operator==(const FolioRef&, const FolioRef&) = default;
};

struct PageRef {
    PageNumber page;
    friend bool operator==(const PageRef&, const PageRef&) = default;
};

struct PlateRef {
    std::string label; // "7", "XII", "B", "frontispiece"
    Side side = Side::both;
    friend bool operator==(const PlateRef&, const PlateRef&) = default;
};

using LeafRef = std::variant<SignedLeaf, FolioRef, PageRef, PlateRef>;

// From one place to another of the same kind, both included; one place where `last` is none.
struct LeafSpan {
    LeafRef first;
    std::optional<LeafRef> last;
    friend bool operator==(const LeafSpan&, const LeafSpan&) = default;
};

struct GatheringSpan {
    Signature first;
    std::optional<Signature> last;
    friend bool operator==(const GatheringSpan&, const GatheringSpan&) = default;
};

enum class Countable : unsigned char { leaves, plates, gatherings };

// So many, their places not said: "3 plates".
struct CountOf {
    int count = 1;
    Countable what = Countable::leaves;
    friend bool operator==(const CountOf&, const CountOf&) = default;
};

struct WholeBook {
    friend bool operator==(const WholeBook&, const WholeBook&) = default;
};

using LeafSetItem = std::variant<LeafSpan, GatheringSpan, CountOf, WholeBook>;

struct LeafSet {
    std::vector<LeafSetItem> items; // in the order written; empty is no place
    friend bool operator==(const LeafSet&, const LeafSet&) = default;
};

// `at` of an error is the byte where reading could not go on. An empty text is an error for a
// place, and for a set.
[[nodiscard]] tl::expected<LeafRef, TextError> parseLeafRef(std::string_view text);
[[nodiscard]] tl::expected<LeafSet, TextError> parseLeafSet(std::string_view text);

// "K5r", "π2v", "31₄", "f. 112v", "p. 223", "pl. 7".
[[nodiscard]] std::string toText(const LeafRef& ref);
// "B2, C1–C4, 3 plates, gatherings E–G, pp. 12–15, whole book".
[[nodiscard]] std::string toText(const LeafSet& set);

} // namespace headcap::core
