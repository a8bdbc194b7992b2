// A length of time as one says it, in a line of the log: "1 h 20", "45m", "three quarters of an
// hour". Inside of the line's reader.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>

#include "core/treatment/line_words.h"

namespace headcap::core::line {

struct Duration {
    std::int64_t minutes = 0;
    std::size_t words = 0;
};

// Read from these words on; no more than 31 days.
[[nodiscard]] std::optional<Duration> timeAt(const Words& words, std::size_t at);

// The same time over and over, "3 x 25 min", "three baths of 25 min", "3 baths, 25 min each": all
// of it together, and how many words say it.
[[nodiscard]] std::optional<Duration> repeatedAt(const Words& words, std::size_t at);

// How many words from `at` say that the time before them is the whole: "all told".
[[nodiscard]] std::size_t wholeWordsAt(const Words& words, std::size_t at);

} // namespace headcap::core::line
