#include "core/catchwords/number_on_page.h"

#include <algorithm>

namespace headcap::core {
namespace {

constexpr int kMostPages = 100'000;

bool isFigure(char c) {
    return c >= '0' && c <= '9';
}

int romanDigit(char c) {
    switch (c) {
    case 'i':
    case 'I':
    case 'j':
    case 'J':
        return 1;
    case 'v':
    case 'V':
        return 5;
    case 'x':
    case 'X':
        return 10;
    case 'l':
    case 'L':
        return 50;
    case 'c':
    case 'C':
        return 100;
    case 'd':
    case 'D':
        return 500;
    case 'm':
    case 'M':
        return 1000;
    default:
        return 0;
    }
}

std::string_view stripped(std::string_view text, std::string_view chars) {
    const auto begin = text.find_first_not_of(chars);
    if (begin == std::string_view::npos)
        return {};
    return text.substr(begin, text.find_last_not_of(chars) - begin + 1);
}

} // namespace

std::optional<int> readRoman(std::string_view text) {
    if (text.empty() || text.size() > 15)
        return std::nullopt;
    int total = 0;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const int digit = romanDigit(text[at]);
        if (digit == 0)
            return std::nullopt;
        const int next = at + 1 < text.size() ? romanDigit(text[at + 1]) : 0;
        total += digit < next ? -digit : digit;
    }
    return total > 0 ? std::optional(total) : std::nullopt;
}

std::optional<NumberOnPage> readNumberOnPage(std::string_view text) {
    text = stripped(text, " \t");
    const bool supplied = text.starts_with('[');
    if (const auto correction = text.find('['); correction != std::string_view::npos && !supplied)
        text = text.substr(0, correction);
    text = stripped(text, " []().:-–—");
    for (const std::string_view word : {"fol", "Fol", "f", "p", "pag", "Pag", "Bl"}) {
        if (text.starts_with(word) && text.size() > word.size() &&
            (text[word.size()] == '.' || text[word.size()] == ' '))
            text = stripped(text.substr(word.size()), " .");
    }
    if (text.empty())
        return std::nullopt;
    if (std::ranges::all_of(text, isFigure)) {
        int value = 0;
        for (const char c : text) {
            value = value * 10 + (c - '0');
            if (value > kMostPages)
                return std::nullopt;
        }
        return NumberOnPage{value, PrintedNumerals::arabic, supplied};
    }
    if (const auto roman = readRoman(text))
        return NumberOnPage{*roman, PrintedNumerals::roman, supplied};
    return std::nullopt;
}

} // namespace headcap::core
