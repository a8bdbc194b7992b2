// From the pages of a book as they are bound (numbers, signature marks, catchwords, first words)
// to its make-up and to what is wrong with it. Catchwords, marks with their folds, and numbers
// check one another: a jump in the numbers alone is a printer's slip, not a lost leaf. Rows count
// from 1. A finding is a sentence with its evidence, in English.
// Practice: collation by catchword, signature and fold as bibliographers describe it (Gaskell,
// A New Introduction to Bibliography; Cockerell, Bookbinding, and the Care of Books, ch. II).
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "core/catchwords/page_table.h"
#include "core/catchwords/printed_mark.h"

namespace headcap::core {

enum class LeafFindingKind {
    leafLacking,
    misnumbered,
    misbound,
    duplicate,
    missigned,
    unexplained,
};

struct LeafFinding {
    LeafFindingKind kind = LeafFindingKind::unexplained;
    int afterRow = 0;  // the last row before the place; 0 at the very beginning
    int beforeRow = 0; // the first row after it; one past the last row at the very end
    int leaves = 0;
    bool sure = false;
    std::string sentence;
};

struct InferredGathering {
    std::string signature;          // as bibliographers write it: C, 2A, π
    int leaves = 0;                 // called for
    int lacking = 0;                // of them
    std::vector<int> lackingLeaves; // which, from 1
    int firstRow = 0;
    int lastRow = 0;
    bool marked = false;               // at least one of its marks was read
    bool sure = false;                 // marked, and of a length usual in this book
    std::optional<GatheringRank> rank; // nothing for an unsigned gathering, π or χ
};

struct LeafDiagnosis {
    std::string formula;
    std::string extent;
    std::vector<InferredGathering> gatherings;
    std::vector<LeafFinding> findings; // in the order of their places
};

[[nodiscard]] LeafDiagnosis diagnoseLeaves(std::span<const PageRow> pages);

[[nodiscard]] std::string_view wordOf(LeafFindingKind kind);

// One object; with its `book` where the table names books.
[[nodiscard]] nlohmann::ordered_json toJson(const LeafDiagnosis& diagnosis,
                                            std::string_view book = {});

} // namespace headcap::core
