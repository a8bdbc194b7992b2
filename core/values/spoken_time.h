// Days and spans of time as people write and say them: "14 March", "14.3.2031", "tomorrow",
// "fri", "in 2 weeks"; "45 min", "1 h 20", "1:20". Shown back as understood.
#pragma once

#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "core/values/text_error.h"
#include "core/values/time.h"

namespace headcap::core {

// A day without a year is the one nearest to today, within half a year either way. Figures alone
// are day.month[.year], as ISO 8601 puts them the other way round and is read too.
[[nodiscard]] tl::expected<Day, TextError> parseDay(std::string_view text, Day today);

// A bare number is minutes.
[[nodiscard]] tl::expected<Minutes, TextError> parseMinutes(std::string_view text);

// "14 March 2031"; "45 min", "1 h 20 min", "2 h".
[[nodiscard]] std::string toText(Day day);
[[nodiscard]] std::string toText(Minutes minutes);

} // namespace headcap::core
