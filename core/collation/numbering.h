// The numbers an extent prints, laid along the leaves of a make-up: what stands, or belongs, on the
// recto and the verso of each. Only sound where formula and extent agree.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/collation/extent.h"
#include "core/collation/make_up.h"

namespace headcap::core {

struct LaidNumber {
    PrintedNumber number;
    bool folio = false;    // counts the leaf, not the page
    bool inferred = false; // belongs here but is not printed
    friend bool operator==(const LaidNumber&, const LaidNumber&) = default;
};

struct LeafNumbers {
    std::optional<LaidNumber> recto;
    std::optional<LaidNumber> verso;
    friend bool operator==(const LeafNumbers&, const LeafNumbers&) = default;
};

// One entry a leaf, in order. Leaves said to be blank are passed over where `skipBlanks`.
[[nodiscard]] std::vector<LeafNumbers> layNumbers(const std::vector<Leaf>& leaves,
                                                  const Extent& extent, bool skipBlanks);

// "223", "xii", "[2]" where inferred.
[[nodiscard]] std::string toText(const LaidNumber& number);

} // namespace headcap::core
