// What an option of a proposal comes to, line by line: the work with what goes into the book, and
// its price; the sums stand in the columns that they add up.
#pragma once

#include "core/record/job_file.h"
#include "core/report/document.h"
#include "core/treatment/cost.h"

namespace headcap::core::report {

// Of none: nothing.
[[nodiscard]] std::string money(const std::optional<Money>& sum);

[[nodiscard]] Table priceTable(const JobFile& file, const OptionCost& cost,
                               const Proposal& proposal);

} // namespace headcap::core::report
