#include "core/values/digest.h"

#include <nettle/sha2.h>

namespace headcap::core {
namespace {

int hexValue(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

} // namespace

std::string Digest::hex() const {
    static constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text;
    text.reserve(bytes.size() * 2);
    for (const std::uint8_t byte : bytes) {
        text += kDigits[byte >> 4U];
        text += kDigits[byte & 0x0FU];
    }
    return text;
}

std::optional<Digest> Digest::fromHex(std::string_view text) {
    Digest digest;
    if (text.size() != digest.bytes.size() * 2) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < digest.bytes.size(); ++i) {
        const int high = hexValue(text[2 * i]);
        const int low = hexValue(text[2 * i + 1]);
        if (high < 0 || low < 0) {
            return std::nullopt;
        }
        digest.bytes[i] = static_cast<std::uint8_t>(high * 16 + low);
    }
    return digest;
}

struct Sha256::State {
    sha256_ctx context{};
};

Sha256::Sha256() : m_state(std::make_unique<State>()) {
    sha256_init(&m_state->context);
}
Sha256::~Sha256() = default;
Sha256::Sha256(Sha256&&) noexcept = default;
Sha256& Sha256::operator=(Sha256&&) noexcept = default;

void Sha256::add(std::span<const std::byte> data) {
    sha256_update(&m_state->context, data.size(),
                  reinterpret_cast<const std::uint8_t*>(data.data()));
}

Digest Sha256::finish() {
    Digest digest;
    sha256_digest(&m_state->context, digest.bytes.size(), digest.bytes.data());
    return digest;
}

Digest sha256(std::span<const std::byte> data) {
    Sha256 hash;
    hash.add(data);
    return hash.finish();
}

Digest sha256(std::string_view data) {
    return sha256(std::as_bytes(std::span(data)));
}

} // namespace headcap::core
