// The leaves of a book as they are counted: how many came in, were put in and taken out by the
// work, and how many go out again.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/record/job_file.h"

namespace headcap::core {

struct LeafCount {
    std::optional<std::int64_t> in;  // on arrival; none where a volume is not counted
    std::int64_t added = 0;          // supplied, by steps that stand
    std::int64_t removed = 0;        // of what standing steps took out, what names leaves
    bool isCountedOut = false;       // somebody has answered for it
    std::optional<std::int64_t> out; // the number they gave, the first of their words

    [[nodiscard]] std::optional<std::int64_t> due() const;
    // Both are known, and they differ.
    [[nodiscard]] bool isApart() const;
};

[[nodiscard]] LeafCount leafCountOf(const JobFile& file);
// "107 of 108 leaves on arrival and K5 supplied: 108 go out".
[[nodiscard]] std::string leafCountText(const JobFile& file);

} // namespace headcap::core
