// A workshop of any size, filled with what twenty years would fill it with: jobs returned and some
// in the house, steps with their materials and ledger, photographs, and the journal of it all.
#pragma once

#include <cstdint>
#include <filesystem>

#include "core/record/stores.h"

namespace headcap::bench {

// What a job has of each, on average; some have many times as much.
inline constexpr std::int64_t kStepsAJob = 12;
inline constexpr std::int64_t kUsesAJob = 6;
inline constexpr std::int64_t kPhotographsAJob = 10;
inline constexpr std::int64_t kInTheHouse = 40;

// In a folder that is missing or empty.
void makeWorkshop(const std::filesystem::path& folder, std::int64_t jobs);

} // namespace headcap::bench
