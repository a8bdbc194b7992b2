// The leaves of a book, and its plates apart from them, as they are counted: how many came in, were
// put in and taken out by the work, and how many go out again.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/record/job_file.h"

namespace headcap::core {

struct Tally {
    std::optional<std::int64_t> in;  // on arrival; none where they were not counted
    std::int64_t added = 0;          // supplied, by steps that stand
    std::int64_t removed = 0;        // of what standing steps took out, what names them
    std::optional<std::int64_t> out; // as somebody counted before it leaves

    [[nodiscard]] std::optional<std::int64_t> due() const;
    // Both are known, and they differ.
    [[nodiscard]] bool isApart() const;
};

struct LeafCount {
    Tally leaves{};
    Tally plates{};            // `in` is none where the book has none
    bool isCountedOut = false; // somebody has answered for it
};

[[nodiscard]] LeafCount leafCountOf(const JobFile& file);
// "28 of 28 leaves and 22 of 24 plates on arrival, pl. IX and pl. XIV supplied: 28 leaves and
// 24 plates go out".
[[nodiscard]] std::string leafCountText(const JobFile& file);
// "28 leaves and 24 plates", of two numbers that are known.
[[nodiscard]] std::string leavesAndPlates(const std::optional<std::int64_t>& leaves,
                                          const std::optional<std::int64_t>& plates);

} // namespace headcap::core
