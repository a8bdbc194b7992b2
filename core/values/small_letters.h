// ASCII letters made small, whatever the system's language: for keys, units and the English words
// of a vocabulary. What people search by is folded (fold.h).
#pragma once

#include <algorithm>
#include <string>
#include <string_view>

namespace headcap::core {

[[nodiscard]] constexpr char smallLetter(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

[[nodiscard]] inline std::string inSmallLetters(std::string_view text) {
    std::string small{text};
    std::ranges::transform(small, small.begin(), smallLetter);
    return small;
}

} // namespace headcap::core
