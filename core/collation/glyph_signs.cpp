// Single signs: what they are, and how they are written.
#include <array>

#include "core/collation/glyphs.h"

namespace headcap::core {

void appendUtf8(std::string& out, char32_t sign) {
    const auto put = [&](char32_t byte) { out.push_back(static_cast<char>(byte)); };
    if (sign < 0x80) {
        put(sign);
    } else if (sign < 0x800) {
        put(0xC0U | (sign >> 6U));
        put(0x80U | (sign & 0x3FU));
    } else if (sign < 0x10000) {
        put(0xE0U | (sign >> 12U));
        put(0x80U | ((sign >> 6U) & 0x3FU));
        put(0x80U | (sign & 0x3FU));
    } else {
        put(0xF0U | (sign >> 18U));
        put(0x80U | ((sign >> 12U) & 0x3FU));
        put(0x80U | ((sign >> 6U) & 0x3FU));
        put(0x80U | (sign & 0x3FU));
    }
}

std::string toUtf8(char32_t sign) {
    std::string out;
    appendUtf8(out, sign);
    return out;
}

bool isDigit(char32_t sign) {
    return sign >= U'0' && sign <= U'9';
}

bool isLatin(char32_t sign) {
    return (sign >= U'A' && sign <= U'Z') || (sign >= U'a' && sign <= U'z');
}

bool isLetter(char32_t sign) {
    const bool accented = (sign >= 0xC0 && sign <= 0x24F && sign != U'×' && sign != U'÷') ||
                          (sign >= 0x1E00 && sign <= 0x1EFF);
    const bool romanised = sign == 0x2BB || sign == 0x2BC || sign == 0x2BE || sign == 0x2BF;
    return isLatin(sign) || accented || romanised || (sign >= 0x391 && sign <= 0x3A9) ||
           (sign >= 0x3B1 && sign <= 0x3C9) || (sign >= 0x400 && sign <= 0x481) ||
           (sign >= 0x5D0 && sign <= 0x5EA);
}

bool isUpper(char32_t sign) {
    return isLetter(sign) && toLower(sign) != sign;
}

char32_t toLower(char32_t sign) {
    if ((sign >= U'A' && sign <= U'Z') || (sign >= 0x391 && sign <= 0x3A9) ||
        (sign >= 0x410 && sign <= 0x42F)) {
        return sign + 32;
    }
    if (sign >= 0x400 && sign <= 0x40F) {
        return sign + 80;
    }
    if (sign >= 0x460 && sign <= 0x480 && sign % 2 == 0) {
        return sign + 1;
    }
    return sign;
}

bool isSpace(char32_t sign) {
    return sign == U' ' || (sign >= 9 && sign <= 13) || sign == 0xA0 ||
           (sign >= 0x2000 && sign <= 0x200B) || sign == 0x202F;
}

std::string superscript(int number) {
    static constexpr std::array<const char*, 10> kDigits{"⁰", "¹", "²", "³", "⁴",
                                                         "⁵", "⁶", "⁷", "⁸", "⁹"};
    std::string out;
    for (const char digit : std::to_string(number)) {
        out += kDigits.at(static_cast<std::size_t>(digit - '0'));
    }
    return out;
}

std::string subscript(int number) {
    static constexpr std::array<const char*, 10> kDigits{"₀", "₁", "₂", "₃", "₄",
                                                         "₅", "₆", "₇", "₈", "₉"};
    std::string out;
    for (const char digit : std::to_string(number)) {
        out += kDigits.at(static_cast<std::size_t>(digit - '0'));
    }
    return out;
}

} // namespace headcap::core
