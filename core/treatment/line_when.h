// When, in a line of the log: the day it was done, and from when till when. Inside of the line's
// reader.
#pragma once

#include <optional>

#include "core/treatment/line_words.h"

namespace headcap::core::line {

struct When {
    std::optional<Day> day{};
    std::optional<Minutes> begins{}; // from midnight
    std::optional<Minutes> ends{};
};

// "yesterday", "on Monday", "last Friday", "12 Nov", "2 days ago"; "9:00-9:20", "from 9 to 10:30".
// A weekday is the last that was, today among them but for "last". A span needs one end with its
// minutes or an am or pm, else it may be leaves; hours from one to six are of the afternoon.
[[nodiscard]] When takeWhen(Words& words, const std::optional<Day>& today);

// "dries till 4 pm", "press until tomorrow 9am": when what sets is over.
[[nodiscard]] std::optional<SetsTill> takeSetsTill(Words& words, const std::optional<Day>& today);

} // namespace headcap::core::line
