// How long, in a line of the log: minutes of work, and time to set, dry or press, which nobody
// works through. Inside of the line's reader.
#pragma once

#include <optional>

#include "core/treatment/line_words.h"

namespace headcap::core::line {

struct Times {
    std::optional<Minutes> work{};
    std::vector<Minutes> others{}; // that may be it as well
    std::optional<Minutes> sets{};
    bool isOfEach = false; // the work is of each of several, and how many is not said
};

// Takes one of each, of those to set the longest; a further one stays in the description, and so
// does what says more than a time ("3 baths of 25 min", "20 min each"). Of several times of work it
// is the one that says the whole ("1 h all told"), else the first that is not of each of several. A
// time of more than 31 days is no time.
[[nodiscard]] Times takeTimes(Words& words);

// "pressed B2 between boards 2 h": nobody worked through that, unless it "took 2 h". Once the
// technique is known.
void pressInstead(Words& words, Times& times);

// Whether what stands before `at` says that something sets, dries or is pressed.
[[nodiscard]] bool isSettingAt(const Words& words, std::size_t at);

} // namespace headcap::core::line
