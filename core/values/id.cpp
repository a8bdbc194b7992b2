#include "core/values/id.h"

#include <algorithm>
#include <array>

namespace headcap::core {
namespace {

constexpr std::uint64_t kMilliseconds = (std::uint64_t{1} << 48U) - 1;
constexpr std::uint64_t kHigh = (std::uint64_t{1} << 12U) - 1;
constexpr std::uint64_t kLow = (std::uint64_t{1} << 62U) - 1;

constexpr bool isHyphenPlace(std::size_t i) {
    return i == 8 || i == 13 || i == 18 || i == 23;
}

int hexValue(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

// Times before 1970 and past the year 10889 don't fit; they are drawn to the nearest that does.
std::uint64_t millisecondsOf(Instant now) {
    const std::int64_t count = now.time_since_epoch().count();
    return std::min(static_cast<std::uint64_t>(std::max<std::int64_t>(count, 0)), kMilliseconds);
}

std::mt19937_64 seededBySystem() {
    std::random_device device;
    std::array<std::random_device::result_type, 16> words{};
    std::ranges::generate(words, [&] { return device(); });
    std::seed_seq seed(words.begin(), words.end());
    return std::mt19937_64(seed);
}

} // namespace

Uuid Uuid::fromParts(const Parts& parts) {
    std::array<std::uint8_t, 16> bytes{};
    const std::uint64_t head = (parts.milliseconds & kMilliseconds) << 16U |
                               std::uint64_t{7} << 12U | (parts.high & kHigh);
    const std::uint64_t tail = std::uint64_t{2} << 62U | (parts.low & kLow);
    for (std::size_t i = 0; i < 8; ++i) {
        bytes[i] = static_cast<std::uint8_t>(head >> (56 - 8 * i));
        bytes[8 + i] = static_cast<std::uint8_t>(tail >> (56 - 8 * i));
    }
    return Uuid{bytes};
}

Uuid::Parts Uuid::parts() const {
    std::uint64_t head = 0;
    std::uint64_t tail = 0;
    for (std::size_t i = 0; i < 8; ++i) {
        head = head << 8U | m_bytes[i];
        tail = tail << 8U | m_bytes[8 + i];
    }
    return {head >> 16U, head & kHigh, tail & kLow};
}

std::optional<Uuid> Uuid::fromText(std::string_view text) {
    if (text.size() != 36) {
        return std::nullopt;
    }
    std::array<std::uint8_t, 16> bytes{};
    std::size_t digit = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (isHyphenPlace(i)) {
            if (text[i] != '-') {
                return std::nullopt;
            }
            continue;
        }
        const int value = hexValue(text[i]);
        if (value < 0) {
            return std::nullopt;
        }
        bytes[digit / 2] = static_cast<std::uint8_t>(bytes[digit / 2] << 4U | value);
        ++digit;
    }
    const bool isVersion7 = bytes[6] >> 4U == 7;
    const bool isRfcVariant = bytes[8] >> 6U == 2;
    return isVersion7 && isRfcVariant ? std::optional(Uuid{bytes}) : std::nullopt;
}

Uuid Uuid::make(Instant now, std::mt19937_64& chance) {
    const std::uint64_t high = chance();
    return fromParts({millisecondsOf(now), high, chance()});
}

std::string Uuid::text() const {
    static constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text;
    text.reserve(36);
    for (const std::uint8_t byte : m_bytes) {
        if (isHyphenPlace(text.size())) {
            text += '-';
        }
        text += kDigits[byte >> 4U];
        text += kDigits[byte & 0x0FU];
    }
    return text;
}

IdSource::IdSource(const Clock& clock) : m_clock(clock), m_chance(seededBySystem()) {}
IdSource::IdSource(const Clock& clock, std::uint64_t seed) : m_clock(clock), m_chance(seed) {}

Uuid IdSource::nextUuid() {
    Uuid next = Uuid::make(m_clock.now(), m_chance);
    if (m_last && next.parts().milliseconds <= m_last->parts().milliseconds) {
        // RFC 9562, 6.2, method 2: within a millisecond, or where the clock went back, the chance
        // part grows by a step of chance; an overflow borrows from the time to come.
        Uuid::Parts parts = m_last->parts();
        parts.low += 1 + (m_chance() & 0xFFFF'FFFFU);
        parts.high += parts.low > kLow ? 1 : 0;
        parts.milliseconds += parts.high > kHigh ? 1 : 0;
        next = Uuid::fromParts(parts);
    }
    m_last = next;
    return next;
}

} // namespace headcap::core
