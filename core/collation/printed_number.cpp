#include "core/collation/printed_number.h"

#include <array>
#include <utility>

#include "core/collation/glyphs.h"

namespace headcap::core {
namespace {

int valueOf(char letter) {
    switch (letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter + 32) : letter) {
    case 'i':
    case 'j':
        return 1;
    case 'v':
    case 'u':
        return 5;
    case 'x':
        return 10;
    case 'l':
        return 50;
    case 'c':
        return 100;
    case 'd':
        return 500;
    case 'm':
        return 1000;
    default:
        return 0;
    }
}

} // namespace

std::optional<int> romanValue(std::string_view letters) {
    if (letters.empty() || letters.size() > 20) {
        return std::nullopt;
    }
    int total = 0;
    int before = 0;
    for (std::size_t i = letters.size(); i-- > 0;) {
        const int value = valueOf(letters[i]);
        if (value == 0) {
            return std::nullopt;
        }
        // A smaller value before a larger one is taken from it (xl), however often it stands (iix).
        total += value < before ? -value : value;
        before = value < before ? before : value;
    }
    return total > 0 && total <= 9999 ? std::optional(total) : std::nullopt;
}

std::string toRoman(int value, bool upper) {
    static constexpr std::array<std::pair<int, std::string_view>, 13> kSteps{{{1000, "m"},
                                                                              {900, "cm"},
                                                                              {500, "d"},
                                                                              {400, "cd"},
                                                                              {100, "c"},
                                                                              {90, "xc"},
                                                                              {50, "l"},
                                                                              {40, "xl"},
                                                                              {10, "x"},
                                                                              {9, "ix"},
                                                                              {5, "v"},
                                                                              {4, "iv"},
                                                                              {1, "i"}}};
    std::string out;
    for (const auto& [worth, letters] : kSteps) {
        for (; value >= worth && value < 10'000; value -= worth) {
            out += letters;
        }
    }
    for (char& letter : out) {
        letter = upper ? static_cast<char>(letter - 32) : letter;
    }
    return out;
}

std::string toText(const PrintedNumber& number) {
    std::string out = number.sequence > 1 ? superscript(number.sequence) : std::string();
    if (number.style == NumeralStyle::arabic) {
        return out + std::to_string(number.value);
    }
    return out + toRoman(number.value, number.style == NumeralStyle::romanUpper);
}

} // namespace headcap::core
