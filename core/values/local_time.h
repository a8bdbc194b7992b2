// What the clock on the workshop's wall shows at a moment, and the moment that it means.
#pragma once

#include <functional>

#include "core/values/time.h"

namespace headcap::core {

// Local time less UTC, of any moment; a parameter, so that tests can say what it is.
using UtcOffset = std::function<std::chrono::seconds(Instant)>;

// Of the machine's time zone, by the rules of the IANA time zone database as the system keeps them.
[[nodiscard]] std::chrono::seconds systemUtcOffset(Instant at);

// Whole minutes from midnight, as the clock shows them.
[[nodiscard]] Minutes timeOfDay(Instant at, const UtcOffset& offset);

// The moment of a time of the clock on a day. On the day the clocks go back an hour comes twice:
// the first of the two is meant. On the day they go forward an hour does not come: it is counted as
// if they had not gone forward yet, so that 2:30 is an hour after 1:30. Both as RFC 5545, 3.3.5
// reads a local time.
[[nodiscard]] Instant momentAt(Day day, Minutes sinceMidnight, const UtcOffset& offset);

} // namespace headcap::core
