// Days and times of the demo, told from the day it is built: "day -34", "day -34 09:10". Times are
// the workshop's local time.
#pragma once

#include <optional>
#include <string_view>

#include "core/values/time.h"

namespace headcap::demo {

class DemoDays {
public:
    explicit DemoDays(const core::Clock& clock) : m_clock(clock), m_today(clock.today()) {}

    // Nothing where the text is not of that form.
    [[nodiscard]] std::optional<core::Day> day(std::string_view text) const;
    [[nodiscard]] std::optional<core::Instant> instant(std::string_view text) const;

    [[nodiscard]] core::Day dayOf(core::Instant at) const { return m_clock.dayOf(at); }
    // "2031:03:05 09:10:00", as a camera set to local time writes it.
    [[nodiscard]] std::string cameraTime(core::Instant at) const;

private:
    [[nodiscard]] core::Instant midnight(core::Day day) const;

    const core::Clock& m_clock;
    core::Day m_today;
};

// The same clock, but at the moment of the story that is being told: keys made then sort by it.
class StoryClock final : public core::Clock {
public:
    explicit StoryClock(const core::Clock& real) : m_real(real), m_now(real.now()) {}
    void set(core::Instant now) { m_now = now; }
    [[nodiscard]] core::Instant now() const override { return m_now; }
    [[nodiscard]] core::Day today() const override { return m_real.dayOf(m_now); }
    [[nodiscard]] core::Day dayOf(core::Instant instant) const override {
        return m_real.dayOf(instant);
    }

private:
    const core::Clock& m_real;
    core::Instant m_now;
};

} // namespace headcap::demo
