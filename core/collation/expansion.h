// Works terms out into a make-up, under one reading of what the terms leave open. What can't be
// worked out is a problem with its place; the rest is still given.
#pragma once

#include <optional>
#include <vector>

#include "core/collation/make_up.h"
#include "core/collation/terms.h"

namespace headcap::core {

// How what a record leaves open is taken. The default takes nothing from outside the formula.
struct TermReading {
    int unknownCount = 0;       // leaves of gatherings whose count is not printed; 0: unknown
    bool setTogether = false;   // AB⁶ is A⁶ B⁶, as incunable catalogues write
    bool carried = false;       // a count holds for the marks before it that have none: a b⁸
    bool plainAreCounts = true; // G4 is a gathering of four; otherwise the one leaf G4
    bool leafRanges = false;    // 11H-11Q2 runs to the leaf 11Q2
    Alphabet alphabet = Alphabet::latin;

    friend bool operator==(const TermReading&, const TermReading&) = default;
};

struct Expansion {
    MakeUp makeUp;
    std::vector<ReadingProblem> problems;
    std::vector<Assumption> assumptions;
    int perhapsBlank = 0; // leaves taken out with the words "blank?": an extent may count them
};

// No book comes near it; what calls for more is a problem, not a make-up.
inline constexpr int kMostLeavesInBook = 20'000;

[[nodiscard]] Expansion expand(const Terms& terms, const TermReading& reading);

} // namespace headcap::core
