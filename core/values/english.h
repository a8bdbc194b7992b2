// Small pieces of English for the sentences that core composes: dates, counts, lists, full stops.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/values/time.h"

namespace headcap::core {

// "5 March 2031".
[[nodiscard]] std::string dayText(Day day);

// "1 point", "3 points".
[[nodiscard]] std::string counted(std::size_t count, std::string_view one, std::string_view many);

// "a", "a and b", "a, b and c".
[[nodiscard]] std::string listed(const std::vector<std::string>& things);

// The text with a full stop, where it ends without a mark of its own; blanks at its ends dropped.
[[nodiscard]] std::string sentence(std::string_view text);

// The first letter raised, where it is ASCII.
[[nodiscard]] std::string capitalised(std::string_view text);

// "25 min", "1 h 20 min", "2 h".
[[nodiscard]] std::string minutesText(Minutes minutes);

} // namespace headcap::core
