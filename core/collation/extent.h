// A statement of extent, "[16], 384, [8] p., 3 folded plates", as catalogues write it: DCRMR
// 6.21.42 (a bracketed number is a count, a bare one the last of a numbering from 1) and Bowers
// ([1-2] 3-62 [63-64]: brackets hold inferred numbers, no commas). Columns and plates lie outside
// the signatures and are not counted in.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/collation/printed_number.h"
#include "core/collation/terms.h"

namespace headcap::core {

enum class ExtentUnit : unsigned char { pages, leaves, columns };

// One sequence: so many pages or leaves, without numbers, or numbered from `first`.
struct ExtentRun {
    ExtentUnit unit = ExtentUnit::pages;
    int count = 0;
    std::optional<PrintedNumber> first; // none: unnumbered
    bool inferred = false;              // its numbers are not printed
    bool foliated = false;              // a run of pages numbered by the leaf: 92 [i.e. 184]
    int part = 0;
    friend bool operator==(const ExtentRun&, const ExtentRun&) = default;
};

struct Extent {
    std::vector<ExtentRun> runs;
    int plates = 0;           // leaves of plates called for
    bool atLeast = false;     // "[196+]": a lower bound
    bool approximate = false; // "ca. 298 p."
    std::vector<ReadingProblem> problems;
    std::vector<Assumption> assumptions;
    // Ways the same words can be taken, when a correction may be a last number or a true count.
    int readings = 1;

    [[nodiscard]] bool counted() const; // there is something to compare with the signatures
};

// `reading` picks one of the ways, from 0.
[[nodiscard]] Extent readExtent(std::string_view statement, int reading = 0);

// Pages by two, each volume rounded up: an odd number leaves a side unrecorded.
[[nodiscard]] int leafTotal(const Extent& extent);
[[nodiscard]] int pageTotal(const Extent& extent);

} // namespace headcap::core
