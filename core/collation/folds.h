// Which leaves of a book hang together: the two halves of a fold, the middle of a gathering, the
// leaves of one printed sheet. When one half of a fold is lost the other is loose or held by paste
// alone, so each points to the other.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/collation/leaf_places.h"

namespace headcap::core {

// How many leaves a sheet of the format folds into: 2 for a folio, 8 for an octavo; none where the
// format is not known.
[[nodiscard]] std::optional<int> leavesOfSheet(std::string_view format);

struct LeafFolds {
    std::optional<std::size_t> conjugate; // indices among the leaves
    std::optional<std::pair<std::size_t, std::size_t>>
        middle;                     // of its gathering, where it is whole
    std::vector<std::size_t> sheet; // in order, itself among them; empty where it is not certain
};

// `format` as the formula gives it, "8o". Sheets are taken as quired one inside the other, the
// first outermost; leaves put in or replaced belong to none.
[[nodiscard]] LeafFolds foldsOf(const LaidBook& book, std::string_view format, std::size_t leaf);

// What is to be looked at because the other half of its fold is lost or off.
struct FoldHint {
    std::size_t leaf = 0;  // to be looked at
    std::size_t other = 0; // what is known to be lost or loose
    bool otherIsLost = false;
    friend bool operator==(const FoldHint&, const FoldHint&) = default;
};
// In order of the leaves to be looked at. Where both halves are lost or both are loose there is
// nothing more to look for.
[[nodiscard]] std::vector<FoldHint> foldHints(const LaidBook& book,
                                              const std::vector<std::size_t>& lost,
                                              const std::vector<std::size_t>& loose);
// "Leaf K2 is lacking: K7, the other half of its fold, may be loose, or held by a stub …"
[[nodiscard]] std::string sentenceOf(const LaidBook& book, const FoldHint& hint);

// "K5", as people point at it.
[[nodiscard]] std::string leafText(const LaidBook& book, std::size_t leaf);

} // namespace headcap::core
