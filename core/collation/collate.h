// A collation read whole: formula and extent against each other, every leaf with its reference,
// its conjugate and the numbers that belong on it, what was assumed and what could not be read.
// Where the formula leaves something open (a leaf count not printed, a number that lost its place
// above the line) the extent may confirm one reading; it is then taken, and listed as an assumption
// from the extent. Nothing is guessed without one.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "core/collation/compare.h"
#include "core/collation/formula.h"
#include "core/collation/numbering.h"

namespace headcap::core {

struct CollateRequest {
    std::string formula;
    std::string extent; // empty: none given, the formula's own statement is used if it has one
    std::string format; // "8o", "8vo"…; empty: none given
};

struct ExtentAnswer {
    std::string statement;
    Extent extent;
    std::optional<int> leafTotal; // none where nothing could be counted
    std::optional<int> pageTotal;
    bool agrees = false;
    bool assumedFromExtent = false;
    std::optional<int> difference; // extent less formula, in leaves
    std::string explanation;
};

struct CollateAnswer {
    std::string formula; // canonical
    std::string format;  // "8o", or empty
    MakeUp makeUp;
    std::vector<Leaf> leaves;         // of the ideal copy
    std::vector<LeafNumbers> numbers; // one a leaf
    std::optional<int> leafTotal;     // of the ideal copy; none while some count is unknown
    std::optional<int> presentTotal;  // less what this copy lacks
    std::vector<Assumption> assumptions;
    std::optional<ExtentAnswer> extent;
    std::vector<ReadingProblem> problems;
};

[[nodiscard]] CollateAnswer collate(const CollateRequest& request);

// 0 read whole and agreeing (or nothing to compare), 1 formula and extent disagree, 2 not read
// whole.
[[nodiscard]] int exitStatus(const CollateAnswer& answer);

// Leaves are indexed from 1; `conjugate` is such an index, `gathering` the signature; numbers are
// text, as printed; `at` counts characters from 0.
[[nodiscard]] nlohmann::ordered_json toJson(const CollateAnswer& answer,
                                            const CollateRequest& request);

} // namespace headcap::core
