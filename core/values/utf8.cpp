#include "core/values/utf8.h"

#include <algorithm>
#include <cstdint>

#include <unicode/utf8.h>

namespace headcap::core {
namespace {

// ICU's macro narrows within itself.
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wconversion"
// Moves past the next code point; false where none is there.
bool isNextWhole(std::string_view text, std::int64_t& at) {
    const auto size = static_cast<std::int64_t>(text.size());
    UChar32 codePoint = 0;
    U8_NEXT(text.data(), at, size, codePoint);
    return codePoint >= 0;
}
#pragma GCC diagnostic pop

} // namespace

std::optional<std::size_t> firstLineNotUtf8(std::string_view text) {
    const auto size = static_cast<std::int64_t>(text.size());
    for (std::int64_t at = 0; at < size;) {
        const auto from = static_cast<std::size_t>(at);
        if (!isNextWhole(text, at)) {
            return static_cast<std::size_t>(std::ranges::count(text.substr(0, from), '\n')) + 1;
        }
    }
    return std::nullopt;
}

} // namespace headcap::core
