// Going through a book leaf by leaf against its make-up: where a walk stands, what was looked at
// singly, what was passed whole with its gathering, what was not looked at; and the records that
// each thing the collator says comes to. A walk goes by the make-up as it stood when it was begun,
// and is one person's: walks are compared, never mixed.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/collation/leaf_places.h"
#include "core/collation/walk_record.h"

namespace headcap::core {

// The book a walk goes by.
struct WalkedBook {
    LaidBook book;
    std::string format; // "8o"; empty where the formula says none
};
[[nodiscard]] WalkedBook walkedBook(std::string_view formula, std::string_view extent);

enum class Looked { no, whole, singly };

struct LeafWalked {
    Looked looked = Looked::no;
    bool asExpected = true;
    const WalkEntry* read = nullptr; // the last entry of just this leaf
};

struct WalkState {
    std::vector<LeafWalked> leaves;  // one a leaf of the book
    std::optional<std::size_t> here; // the leaf to look at; none: the book is gone through
    std::size_t singly = 0;
    std::size_t whole = 0;
    std::size_t notLooked = 0;
};

// In the order they were made, which is the order of their keys.
[[nodiscard]] std::vector<WalkEntry> entriesOf(const Walk& walk, const std::vector<WalkEntry>& all);
// `entries`: of one walk, in the order they were made; they outlive the state. The walk is taken up
// behind what was looked at last, at the first leaf not looked at.
[[nodiscard]] WalkState stateOf(const LaidBook& book, const std::vector<WalkEntry>& entries);

// The leaf to go to from `leaf`: the next not looked at, or the first of the book; none: all are.
[[nodiscard]] std::optional<std::size_t> nextNotLooked(const WalkState& state, std::size_t leaf);

// What several walks come to together.
struct WalkCoverage {
    std::vector<std::size_t> singly; // leaves
    std::vector<std::size_t> whole;
    std::vector<std::size_t> notLooked;
};
[[nodiscard]] WalkCoverage coverageOf(const std::vector<WalkState>& states, std::size_t leaves);
// "A1–C4 leaf by leaf; gatherings D–K passed whole; L3 not looked at".
[[nodiscard]] std::string coverageText(const LaidBook& book, const WalkCoverage& coverage);

// Leaves of which one walk says that all is as expected and another that it is not, or of which
// both read a mark or a number, and not the same.
[[nodiscard]] std::vector<std::size_t> disagreements(const WalkState& a, const WalkState& b);

} // namespace headcap::core
