// The leaves of a book as they are counted: how many came in, were put in and taken out by the
// work, and how many go out again.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/record/job_file.h"

namespace headcap::core {

struct LeafCount {
    std::optional<std::int64_t> in;       // on arrival; none where a volume is not counted
    std::int64_t added = 0;               // supplied, by steps that stand; plates apart
    std::int64_t removed = 0;             // of what standing steps took out, what names leaves
    std::optional<std::int64_t> platesIn; // none where the book has none, or nobody counted
    std::int64_t platesAdded = 0;
    bool isCountedOut = false;       // somebody has answered for it
    std::optional<std::int64_t> out; // the number they gave, the first of their words

    [[nodiscard]] std::optional<std::int64_t> due() const;
    // Both are known, and they differ.
    [[nodiscard]] bool isApart() const;
};

[[nodiscard]] LeafCount leafCountOf(const JobFile& file);
// "107 of 108 leaves on arrival and K5 supplied: 108 go out"; where the book has plates, "28 of 28
// leaves and 22 of 24 plates on arrival, pl. IX supplied: 28 leaves and 23 plates go out".
[[nodiscard]] std::string leafCountText(const JobFile& file);

} // namespace headcap::core
