// A table of catchwords, each with the first words of the page it points to, compared row by row.
#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include <nlohmann/json_fwd.hpp>
#include <tl/expected.hpp>

#include "core/catchwords/comparison.h"
#include "core/catchwords/page_table.h"

namespace headcap::core {

struct CatchwordAnswer {
    std::vector<CatchwordComparison> rows;
    std::array<std::size_t, 4> counts{}; // by verdict, in the order of CatchwordVerdict

    // Every catchword meets its page.
    [[nodiscard]] bool allMeet() const { return counts[2] == 0 && counts[3] == 0; }
};

// Wants the columns catchword and next_first_words; words_before_catchword and next_running_head
// are read where they stand.
[[nodiscard]] tl::expected<CatchwordAnswer, PageTableError>
compareCatchwords(const TextTable& table);

[[nodiscard]] nlohmann::ordered_json toJson(const CatchwordAnswer& answer);

} // namespace headcap::core
