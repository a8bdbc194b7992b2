// A clock that tests set. Its days are those of UTC, moved by an offset of its own.
#pragma once

#include "core/values/time.h"

namespace headcap::core::tests {

class FixedClock final : public Clock {
public:
    explicit FixedClock(Instant now, Minutes offset = Minutes{0}) : m_now(now), m_offset(offset) {}

    [[nodiscard]] Instant now() const override { return m_now; }
    [[nodiscard]] Day today() const override { return dayOf(m_now); }
    [[nodiscard]] Day dayOf(Instant instant) const override {
        return Day{std::chrono::floor<std::chrono::days>(instant + m_offset)};
    }
    void set(Instant now) { m_now = now; }
    void pass(std::chrono::milliseconds time) { m_now += time; }

private:
    Instant m_now;
    Minutes m_offset;
};

} // namespace headcap::core::tests
