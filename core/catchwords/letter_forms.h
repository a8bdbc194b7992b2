// Single signs of old printing, and what a reader takes them for.
#pragma once

#include <string_view>

namespace headcap::core {

// A letter or ligature that no Unicode decomposition levels: ſ is s, ß is ss; nothing for others.
[[nodiscard]] std::u32string_view levelled(char32_t c);
[[nodiscard]] constexpr bool isFigure(char32_t c) {
    return c >= '0' && c <= '9';
}
[[nodiscard]] bool isVowel(char32_t c);
[[nodiscard]] bool isStrokeMark(char32_t c);
[[nodiscard]] bool isHyphen(char32_t c);
[[nodiscard]] bool isLineEnd(char32_t c);

// Takes one code point off the front; a byte that begins none is read as a space.
[[nodiscard]] char32_t nextCodePoint(std::string_view& utf8);

} // namespace headcap::core
