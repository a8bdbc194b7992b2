#include "demo-data/loader/demo_days.h"

#include <charconv>
#include <chrono>

#include <fmt/format.h>

namespace headcap::demo {
namespace {

constexpr std::string_view kPrefix = "day ";

struct Told {
    int offset = 0;
    std::optional<std::chrono::minutes> time{};
};

std::optional<int> wholeNumber(std::string_view text) {
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc{} && end == text.data() + text.size() ? std::optional{number}
                                                                    : std::nullopt;
}

std::optional<Told> read(std::string_view text) {
    if (!text.starts_with(kPrefix)) {
        return std::nullopt;
    }
    text.remove_prefix(kPrefix.size());
    const auto gap = text.find(' ');
    auto number = text.substr(0, gap);
    if (number.starts_with('+')) {
        number.remove_prefix(1);
    }
    const auto offset = wholeNumber(number);
    if (!offset) {
        return std::nullopt;
    }
    Told told{*offset};
    if (gap != std::string_view::npos) {
        const auto clock = text.substr(gap + 1);
        if (clock.size() != 5 || clock[2] != ':') {
            return std::nullopt;
        }
        const auto hours = wholeNumber(clock.substr(0, 2));
        const auto minutes = wholeNumber(clock.substr(3));
        if (!hours || !minutes || *hours > 23 || *minutes > 59) {
            return std::nullopt;
        }
        told.time = std::chrono::hours{*hours} + std::chrono::minutes{*minutes};
    }
    return told;
}

core::Day later(core::Day day, int days) {
    return core::Day{std::chrono::sys_days{day} + std::chrono::days{days}};
}

} // namespace

std::optional<core::Day> DemoDays::day(std::string_view text) const {
    const auto told = read(text);
    return told && !told->time ? std::optional{later(m_today, told->offset)} : std::nullopt;
}

std::optional<core::Instant> DemoDays::instant(std::string_view text) const {
    const auto told = read(text);
    return told && told->time ? std::optional{midnight(later(m_today, told->offset)) + *told->time}
                              : std::nullopt;
}

std::string DemoDays::cameraTime(core::Instant at) const {
    const core::Day day = m_clock.dayOf(at);
    const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(at - midnight(day));
    const auto time = std::chrono::hh_mm_ss{seconds};
    return fmt::format("{:04}:{:02}:{:02} {:02}:{:02}:{:02}", static_cast<int>(day.year()),
                       static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()),
                       time.hours().count(), time.minutes().count(), time.seconds().count());
}

// The first instant that the clock counts to the day.
core::Instant DemoDays::midnight(core::Day day) const {
    const core::Instant noonUtc = std::chrono::sys_days{day} + std::chrono::hours{12};
    core::Instant before = noonUtc - std::chrono::hours{48};
    core::Instant within = noonUtc + std::chrono::hours{36};
    while (within - before > std::chrono::milliseconds{1}) {
        const core::Instant middle = before + (within - before) / 2;
        (m_clock.dayOf(middle) >= day ? within : before) = middle;
    }
    return within;
}

} // namespace headcap::demo
