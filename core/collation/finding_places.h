// Which leaves findings are of, in a book's make-up.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "core/collation/collation_record.h"
#include "core/collation/leaf_places.h"

namespace headcap::core {

// The leaves a place names, in order; none where it can't be read or is not in the book.
[[nodiscard]] std::vector<std::size_t> leavesAt(const LaidBook& book, std::string_view place);
// Those of all findings of a kind, each once, in order.
[[nodiscard]] std::vector<std::size_t> leavesFound(const LaidBook& book,
                                                   const std::vector<CollationFinding>& findings,
                                                   CollationKind kind);

} // namespace headcap::core
