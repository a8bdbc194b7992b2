// SHA-256, by which photographs, reports and the journal are known.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace headcap::core {

struct Digest {
    std::array<std::uint8_t, 32> bytes{};

    [[nodiscard]] std::string hex() const; // 64 lower-case digits
    [[nodiscard]] static std::optional<Digest> fromHex(std::string_view text);
    friend bool operator==(const Digest&, const Digest&) = default;
    friend auto operator<=>(const Digest&, const Digest&) = default;
};

[[nodiscard]] Digest sha256(std::span<const std::byte> data);
[[nodiscard]] Digest sha256(std::string_view data);

// The same over data that come piece by piece.
class Sha256 {
public:
    Sha256();
    ~Sha256();
    Sha256(Sha256&&) noexcept;
    Sha256& operator=(Sha256&&) noexcept;
    void add(std::span<const std::byte> data);
    [[nodiscard]] Digest finish(); // and begins anew

private:
    struct State;
    std::unique_ptr<State> m_state;
};

} // namespace headcap::core
