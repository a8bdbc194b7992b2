// Signs of abbreviation, kept in a text that was read as private code points, each for any of
// several spellings. Source: abbreviations as tallied in printed Latin and Spanish.
#pragma once

#include <span>
#include <string_view>

namespace headcap::core {

enum AbbreviationSign : char32_t {
    kNasal = 0xE000, // a stroke over a vowel, m or n
    kStroke,         // a stroke over another letter: something is left out
    kAnd,
    kPer,
    kCon,
    kUs,
    kQuod,
    kUe, // after q or b, at a word's end
    kDe,
    kSignEnd
};

// The spellings a sign of abbreviation may stand for, in loose letters; empty for a letter.
// A sign that may stand for any few letters gives the one spelling kAnyLetters.
[[nodiscard]] std::span<const std::u32string_view> expansionsOf(char32_t sign);
inline constexpr std::u32string_view kAnyLetters = U"*";

[[nodiscard]] constexpr bool isAbbreviationSign(char32_t c) {
    return c >= 0xE000 && c < 0xE020;
}

} // namespace headcap::core
