#include "core/values/time.h"

#include <ctime>

#include <fmt/format.h>

namespace headcap::core {
namespace {

using namespace std::chrono;

// Digits at fixed places of an ISO text, walked from its head.
class Reader {
public:
    explicit Reader(std::string_view text) : m_rest(text) {}

    // The next n characters as a number, all of them digits.
    std::optional<int> digits(std::size_t n) {
        if (m_rest.size() < n) {
            return std::nullopt;
        }
        int value = 0;
        for (const char c : m_rest.substr(0, n)) {
            if (c < '0' || c > '9') {
                return std::nullopt;
            }
            value = value * 10 + (c - '0');
        }
        m_rest.remove_prefix(n);
        return value;
    }
    bool mark(char c) {
        if (!m_rest.starts_with(c)) {
            return false;
        }
        m_rest.remove_prefix(1);
        return true;
    }
    [[nodiscard]] bool atEnd() const { return m_rest.empty(); }

private:
    std::string_view m_rest;
};

std::optional<Day> readDay(Reader& in) {
    const auto y = in.digits(4);
    const bool first = in.mark('-');
    const auto m = in.digits(2);
    const bool second = in.mark('-');
    const auto d = in.digits(2);
    if (!y || !m || !d || !first || !second) {
        return std::nullopt;
    }
    const Day day{year{*y}, month{static_cast<unsigned>(*m)},
                  std::chrono::day{static_cast<unsigned>(*d)}};
    return day.ok() ? std::optional(day) : std::nullopt;
}

// Thousandths after the point, none where there is no point.
std::optional<milliseconds> readFraction(Reader& in) {
    if (!in.mark('.')) {
        return milliseconds{0};
    }
    const auto thousandths = in.digits(3);
    return thousandths ? std::optional(milliseconds{*thousandths}) : std::nullopt;
}

bool hasFourDigits(year y) {
    return y >= year{0} && y <= year{9999};
}

} // namespace

std::string isoText(Instant instant) {
    const auto midnight = floor<days>(instant);
    const Day day{midnight};
    if (!hasFourDigits(day.year())) {
        return {};
    }
    const hh_mm_ss time{instant - midnight};
    return fmt::format("{}T{:02}:{:02}:{:02}.{:03}Z", isoText(day), time.hours().count(),
                       time.minutes().count(), time.seconds().count(), time.subseconds().count());
}

std::optional<Instant> instantFromIso(std::string_view text) {
    Reader in(text);
    const auto day = readDay(in);
    const bool t = day && in.mark('T');
    const auto h = in.digits(2);
    const bool first = in.mark(':');
    const auto m = in.digits(2);
    const bool second = in.mark(':');
    const auto s = in.digits(2);
    const auto fraction = readFraction(in);
    const bool utc = in.mark('Z') && in.atEnd();
    if (!t || !h || !first || !m || !second || !s || !fraction || !utc) {
        return std::nullopt;
    }
    if (*h > 23 || *m > 59 || *s > 59) {
        return std::nullopt;
    }
    return sys_days{*day} + hours{*h} + minutes{*m} + seconds{*s} + *fraction;
}

std::string isoText(Day day) {
    if (!day.ok() || !hasFourDigits(day.year())) {
        return {};
    }
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(day.year()),
                       static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
}

std::optional<Day> dayFromIso(std::string_view text) {
    Reader in(text);
    const auto day = readDay(in);
    return in.atEnd() ? day : std::nullopt;
}

int daysBetween(Day a, Day b) {
    return static_cast<int>((sys_days{b} - sys_days{a}).count());
}

Instant SystemClock::now() const {
    return floor<milliseconds>(system_clock::now());
}

Day SystemClock::today() const {
    return dayOf(now());
}

Day SystemClock::dayOf(Instant instant) const {
    const std::time_t seconds = system_clock::to_time_t(floor<std::chrono::seconds>(instant));
    std::tm local{};
    // localtime_r alone would not see a time zone that changed while the program runs.
    tzset();
    localtime_r(&seconds, &local);
    return Day{year{local.tm_year + 1900}, month{static_cast<unsigned>(local.tm_mon + 1)},
               day{static_cast<unsigned>(local.tm_mday)}};
}

} // namespace headcap::core
