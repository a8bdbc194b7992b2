// The moments that a line of the bench log says: when the work ended, and till when it sets. What
// an hour means on the day the clocks change is said by momentAt.
#pragma once

#include "core/treatment/step_line.h"
#include "core/values/local_time.h"

namespace headcap::core {

// Whether the minutes of work are said of themselves ("20 min"), not only from when till when.
[[nodiscard]] bool saysMinutes(const StepLine& line);

// At the hour it says, of the day it says; a day without an hour is at this hour of it, an hour
// without a day is today's. Now, where it says neither.
[[nodiscard]] Instant endOf(const StepLine& line, const Clock& clock, const UtcOffset& offset);

// The line with what only the clock tells: the minutes between two times of the day, where none
// are said of themselves and the clocks change between them; and how long it sets, where it says
// till when. A time to set that is over before the work is done is none.
[[nodiscard]] StepLine timed(StepLine line, const Clock& clock, const UtcOffset& offset);

} // namespace headcap::core
