// Times and days. A time is an instant in UTC to the millisecond; a day is a civil date of the
// workshop's place, which no time zone moves. Both are kept as ISO 8601 text.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace headcap::core {

using Instant = std::chrono::sys_time<std::chrono::milliseconds>;
using Day = std::chrono::year_month_day; // always valid where a record holds one
using Minutes = std::chrono::minutes;

// "2031-03-05T09:10:00.000Z", of the years 0000 to 9999; empty for an instant outside them. The
// thousandths may be left out in reading.
[[nodiscard]] std::string isoText(Instant instant);
[[nodiscard]] std::optional<Instant> instantFromIso(std::string_view text);

// "2031-03-05"; empty for a day that is none or is outside the years 0000 to 9999.
[[nodiscard]] std::string isoText(Day day);
[[nodiscard]] std::optional<Day> dayFromIso(std::string_view text);

// Days from a to b; negative where b comes first.
[[nodiscard]] int daysBetween(Day a, Day b);

// The time, as a parameter, so that tests can say what it is.
class Clock {
public:
    virtual ~Clock() = default;
    [[nodiscard]] virtual Instant now() const = 0;
    [[nodiscard]] virtual Day today() const = 0; // the civil day at the workshop, by local time
    // The civil day at the workshop of any instant.
    [[nodiscard]] virtual Day dayOf(Instant instant) const = 0;
};

// The machine's clock and time zone.
class SystemClock final : public Clock {
public:
    [[nodiscard]] Instant now() const override;
    [[nodiscard]] Day today() const override;
    [[nodiscard]] Day dayOf(Instant instant) const override;
};

} // namespace headcap::core
