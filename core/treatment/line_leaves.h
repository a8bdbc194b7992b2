// How a leaf, a page or a gathering is written as one word of a line. Inside of the line's reader.
#pragma once

#include <string_view>

namespace headcap::core::line {

[[nodiscard]] constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
[[nodiscard]] constexpr bool isLetter(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}

// "112v", "3-5", "7", "A", "K5" after a word like "f." or "plates".
[[nodiscard]] bool isAfterHead(std::string_view text);

// "A-F", "Aa–Dd": gatherings without a word before them. "A": one, beside another.
[[nodiscard]] bool isGatherings(std::string_view text);
[[nodiscard]] bool isGathering(std::string_view text);

// "f.112v", "p223", "pl.7": head and number in one word.
[[nodiscard]] bool isHeadAndNumber(std::string_view lower);

} // namespace headcap::core::line
