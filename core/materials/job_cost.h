// What the materials of a job cost, against what was estimated for them in the lines agreed on.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

struct JobCost {
    std::vector<Money> spent{};     // one a currency
    std::vector<Money> estimated{}; // by the lines approved; empty where none says
    std::size_t unknown = 0;        // uses of which no cost is known
};

[[nodiscard]] JobCost jobCost(const JobFile& file);

// "Materials used: 12.40 EUR. The cost of 2 further uses is not known. Estimated: 18.00 EUR."
[[nodiscard]] std::string sentenceOf(const JobCost& cost);

// "12.40 EUR and 3.00 GBP"; "nothing".
[[nodiscard]] std::string toText(const std::vector<Money>& sums);

} // namespace headcap::core
