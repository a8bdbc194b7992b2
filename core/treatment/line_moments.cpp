#include "core/treatment/line_moments.h"

#include <algorithm>

namespace headcap::core {

bool saysMinutes(const StepLine& line) {
    return std::ranges::find(line.spans, LinePart::minutes, &LineSpan::part) != line.spans.end();
}

Instant endOf(const StepLine& line, const Clock& clock, const UtcOffset& offset) {
    const Instant now = clock.now();
    if (!line.day && !line.ends) {
        return now;
    }
    return momentAt(line.day.value_or(clock.today()),
                    line.ends ? *line.ends : timeOfDay(now, offset), offset);
}

StepLine timed(StepLine line, const Clock& clock, const UtcOffset& offset) {
    const Instant end = endOf(line, clock, offset);
    if (line.begins && line.ends && !saysMinutes(line)) {
        const Instant begin = momentAt(line.day.value_or(clock.today()), *line.begins, offset);
        line.minutes = std::chrono::floor<Minutes>(std::max(end, begin) - begin);
    }
    if (line.setsTill) {
        const Day day = line.setsTill->day.value_or(clock.dayOf(end));
        const Instant till = momentAt(day, line.setsTill->at, offset);
        if (till > end) {
            line.sets = std::chrono::round<Minutes>(till - end);
        }
    }
    return line;
}

} // namespace headcap::core
