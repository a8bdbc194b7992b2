// What the walk says of a leaf, a finding and a walk.
#pragma once

#include <QString>

#include "core/collation/leaf_expectation.h"
#include "core/collation/walk.h"
#include "core/custody/people.h"

namespace headcap::app {

// "leaf 5 of 8 in K · one fold with K4, the middle of the gathering · 77th of 304".
[[nodiscard]] QString whereWords(const core::LeafExpectation& expected, std::size_t leaf,
                                 std::size_t leaves);
// "Misnumbered 12 for 21: …".
[[nodiscard]] QString findingWords(const core::CollationFinding& finding);
[[nodiscard]] QString coverageWords(const core::LaidBook& book, const core::WalkState& state);
// "Orrin Vale, 2 April: 96 leaves singly, 40 passed whole, 168 to go; at K5".
[[nodiscard]] QString walkWords(const core::Walk& walk, const core::WalkState& state,
                                const core::LaidBook& book, const std::vector<core::Person>& people,
                                core::Day began, core::Day today);
[[nodiscard]] QString noteLabel(core::CollationKind kind);
[[nodiscard]] QString noteHint(core::CollationKind kind);

} // namespace headcap::app
