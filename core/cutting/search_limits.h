// How long a search may go on. Work is counted in combinations looked at (very roughly a nanosecond
// each): with the same limit the answer is the same on every machine. Whoever asks can also stop
// it, by a deadline or by hand; what was best then is the answer.
#pragma once

#include <chrono>
#include <cstdint>
#include <functional>
#include <utility>

namespace headcap::core {

struct SearchLimits {
    std::uint64_t work = 6'000'000'000;
    std::function<bool()> isStopped; // asked every few milliseconds; may be empty
};

// Stops at a moment of the steady clock.
[[nodiscard]] inline SearchLimits untilDeadline(std::chrono::steady_clock::time_point deadline) {
    SearchLimits limits;
    limits.isStopped = [deadline] { return std::chrono::steady_clock::now() >= deadline; };
    return limits;
}

// What is left of the limits while a search runs.
class SearchBudget {
public:
    explicit SearchBudget(const SearchLimits& limits) : m_limits(limits), m_left(limits.work) {}
    // A part of what another has left; stopped together with it.
    SearchBudget(const SearchBudget& whole, std::uint64_t atMost)
        : m_limits(whole.m_limits), m_left(whole.m_left < atMost ? whole.m_left : atMost),
          m_isStopped(whole.m_isStopped) {}

    // Says whether to go on.
    bool spend(std::uint64_t work) {
        m_left = work < m_left ? m_left - work : 0;
        m_sinceAsked += work;
        if (m_sinceAsked >= kAskEvery) {
            m_sinceAsked = 0;
            m_isStopped = m_isStopped || (m_limits.isStopped && m_limits.isStopped());
        }
        m_spent += work;
        return !isSpent();
    }
    [[nodiscard]] bool isSpent() const { return m_left == 0 || m_isStopped; }
    [[nodiscard]] std::uint64_t spent() const { return m_spent; }
    [[nodiscard]] std::uint64_t left() const { return isSpent() ? 0 : m_left; }

private:
    static constexpr std::uint64_t kAskEvery = 2'000'000;
    SearchLimits m_limits;
    std::uint64_t m_left;
    std::uint64_t m_spent = 0;
    std::uint64_t m_sinceAsked = 0;
    bool m_isStopped = false;
};

} // namespace headcap::core
