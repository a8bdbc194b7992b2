// What a walk's readings say where they differ from the make-up: the evidence at each such leaf,
// and the explanations that fit it; by how much the printed numbers have come to differ from those
// that should be there.
#pragma once

#include <cstddef>
#include <vector>

#include "core/collation/break_explanations.h"
#include "core/collation/walk.h"
#include "core/collation/walk_entries.h"

namespace headcap::core {

// By how much printed numbers run ahead of the make-up's at a leaf, because they have jumped on a
// leaf before it: where recto and verso of one leaf, or the rectos of two in turn, differ by as
// much. A single number that differs is a misprint and moves nothing.
[[nodiscard]] int numberShift(const LaidBook& book, const std::vector<WalkEntry>& entries,
                              std::size_t leaf);
// What should be on the leaf, its numbers moved by that much.
[[nodiscard]] LeafExpectation expectationInWalk(const WalkedBook& walked,
                                                const std::vector<WalkEntry>& entries,
                                                std::size_t leaf);
// The catchword read at the foot of the leaf before; empty where none was.
[[nodiscard]] std::string catchwordDue(const WalkState& state, std::size_t leaf);

// `findings`: of the volume. A leaf lacking, or one loose that shares its fold with what would lack
// here, says that the fold is short; a gathering seen to its end with all its leaves fast, that it
// is whole.
[[nodiscard]] BreakEvidence evidenceAt(const WalkedBook& walked,
                                       const std::vector<WalkEntry>& entries,
                                       const std::vector<CollationFinding>& findings,
                                       std::size_t leaf, const LeafReading& reading);

} // namespace headcap::core
