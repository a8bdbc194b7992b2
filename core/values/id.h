// The key of a record: a UUID of version 7 (RFC 9562), made by the caller, so that a repeated save
// is harmless and the records of two workshops can meet. An Id is always valid; "none" is an
// optional. The record type keeps keys of different kinds apart.
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <random>
#include <string>
#include <string_view>

#include "core/values/time.h"

namespace headcap::core {

class Uuid {
public:
    // Lower-case, hyphenated, version 7 and the RFC's variant, or nothing.
    [[nodiscard]] static std::optional<Uuid> fromText(std::string_view text);
    // 48 bits of Unix milliseconds, then 74 bits of chance.
    [[nodiscard]] static Uuid make(Instant now, std::mt19937_64& chance);
    [[nodiscard]] std::string text() const;

    friend bool operator==(const Uuid&, const Uuid&) = default;
    friend auto operator<=>(const Uuid&, const Uuid&) = default;

private:
    friend class IdSource;
    struct Parts {
        std::uint64_t milliseconds = 0; // 48 bits
        std::uint64_t high = 0;         // 12 bits of chance
        std::uint64_t low = 0;          // 62 bits of chance
    };
    [[nodiscard]] static Uuid fromParts(const Parts& parts);
    [[nodiscard]] Parts parts() const;
    explicit Uuid(const std::array<std::uint8_t, 16>& bytes) : m_bytes(bytes) {}
    std::array<std::uint8_t, 16> m_bytes;
};

template <class Record>
class Id {
public:
    explicit Id(const Uuid& uuid) : m_uuid(uuid) {}
    [[nodiscard]] const Uuid& uuid() const { return m_uuid; }
    [[nodiscard]] std::string text() const { return m_uuid.text(); }

    friend bool operator==(const Id&, const Id&) = default;
    friend auto operator<=>(const Id&, const Id&) = default;

private:
    Uuid m_uuid;
};

// Makes keys, in order of time within one source: two keys of one millisecond still ascend.
class IdSource {
public:
    explicit IdSource(const Clock& clock);            // seeded by the system
    IdSource(const Clock& clock, std::uint64_t seed); // the same keys every time, for tests

    template <class Record>
    [[nodiscard]] Id<Record> next() {
        return Id<Record>{nextUuid()};
    }
    [[nodiscard]] Uuid nextUuid();

private:
    const Clock& m_clock;
    std::mt19937_64 m_chance;
    std::optional<Uuid> m_last;
};

} // namespace headcap::core
