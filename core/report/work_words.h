// What is done, in the words of its line or entry: the technique's name where they do not say it
// already, and what of it can't be undone.
#pragma once

#include <cstdint>
#include <string>

#include "core/record/job_file.h"

namespace headcap::core::report {

// "Mending tears (4). Tears and folds", but "Surface cleaning" once; of several, how many.
[[nodiscard]] std::string workWords(const JobFile& file, const std::string& technique,
                                    const std::string& words, std::int64_t count = 1);

// Whether somebody wrote that there is nothing.
[[nodiscard]] bool saysNothing(const std::string& text);

// What of an option can't be undone, by what was written and by the nature of its work.
[[nodiscard]] std::string lastingText(const JobFile& file, const ProposalOption& option);

} // namespace headcap::core::report
