#include "core/values/roman.h"

#include <algorithm>
#include <array>
#include <vector>

namespace headcap::core {
namespace {

struct Spelling {
    std::string_view text;
    char sign; // I V X L C D M; J a final I; R the reversed C; Z two; b f t m K: see kValues
};

// Longest first where one begins another.
constexpr auto kSpellings = std::to_array<Spelling>({
    {"\u2180", 'M'}, {"\u2181", 'f'}, {"\u2182", 't'}, {"\u2187", 'm'}, {"\u2188", 'K'},
    {"\u216F", 'M'}, {"\u216E", 'D'}, {"\u216D", 'C'}, {"\u216C", 'L'}, {"\u2169", 'X'},
    {"\u2164", 'V'}, {"\u2160", 'I'}, {"\u0186", 'R'}, {"\u0254", 'R'}, {"\u2183", 'R'},
    {"\u2184", 'R'}, {"\u221E", 'M'}, {"I", 'I'},      {"i", 'I'},      {"J", 'J'},
    {"j", 'J'},      {"V", 'V'},      {"v", 'V'},      {"U", 'V'},      {"u", 'V'},
    {"X", 'X'},      {"x", 'X'},      {"L", 'L'},      {"l", 'L'},      {"C", 'C'},
    {"c", 'C'},      {"D", 'D'},      {"d", 'D'},      {"M", 'M'},      {"m", 'M'},
    {"Z", 'Z'},      {"z", 'Z'},      {")", 'R'},      {"(", 'C'},
});

std::int64_t valueOf(char sign) {
    switch (sign) {
    case 'I':
    case 'J':
        return 1;
    case 'Z':
        return 2;
    case 'V':
        return 5;
    case 'X':
        return 10;
    case 'L':
        return 50;
    case 'C':
        return 100;
    case 'D':
        return 500;
    case 'M':
        return 1'000;
    case 'f':
        return 5'000;
    case 't':
        return 10'000;
    case 'm':
        return 50'000;
    case 'K':
        return 100'000;
    default:
        return 0;
    }
}

struct Sign {
    std::int64_t value = 0;
    bool isFinalI = false; // j
    bool isReversedC = false;
};

std::optional<std::vector<Sign>> signsOf(std::string_view text) {
    static constexpr auto kIgnored =
        std::to_array<std::string_view>({" ", ".", ",", "\u00A0", "\u2009"});
    static constexpr auto kOverlines = std::to_array<std::string_view>({"\u0304", "\u0305"});
    std::vector<Sign> signs;
    const auto startsWith = [&](std::string_view mark) { return text.starts_with(mark); };
    while (!text.empty()) {
        if (const auto blank = std::ranges::find_if(kIgnored, startsWith);
            blank != kIgnored.end()) {
            text.remove_prefix(blank->size());
            continue;
        }
        if (const auto line = std::ranges::find_if(kOverlines, startsWith);
            line != kOverlines.end() && !signs.empty()) {
            signs.back().value *= signs.back().value < 1'000'000 ? 1'000 : 0;
            text.remove_prefix(line->size());
            continue;
        }
        const auto known = std::ranges::find_if(kSpellings, startsWith, &Spelling::text);
        if (known == kSpellings.end()) {
            return std::nullopt;
        }
        signs.push_back({valueOf(known->sign), known->sign == 'J', known->sign == 'R'});
        text.remove_prefix(known->text.size());
    }
    return signs;
}

// "CIƆ" and its kin made into single signs; nothing where a reversed C stands alone.
std::optional<std::vector<Sign>> withoutApostrophus(const std::vector<Sign>& signs) {
    std::vector<Sign> out;
    for (std::size_t i = 0; i < signs.size(); ++i) {
        if (signs[i].isReversedC) {
            return std::nullopt;
        }
        std::size_t closing = 0;
        while (i + 1 + closing < signs.size() && signs[i + 1 + closing].isReversedC) {
            ++closing;
        }
        if (closing == 0) {
            out.push_back(signs[i]);
            continue;
        }
        if (signs[i].value != 1 || closing > 6) {
            return std::nullopt;
        }
        std::size_t opening = 0;
        while (opening < closing && opening < out.size() &&
               out[out.size() - 1 - opening].value == 100) {
            ++opening;
        }
        std::int64_t value = 500;
        for (std::size_t n = 1; n < closing; ++n) {
            value *= 10;
        }
        if (opening == closing) {
            out.resize(out.size() - opening);
            value *= 2;
        }
        out.push_back({value, false, false});
        i += closing;
    }
    return out;
}

struct Part {
    std::int64_t value = 0;
    std::size_t length = 0;
};

// "iiij xx" is 80 and "VI C" 600: units before a hundred or a score multiply it where they can't
// be taken from it, being mixed, four, closed by a j, or a V before tens.
std::optional<Part> multiplied(const std::vector<Sign>& signs, std::size_t from) {
    std::size_t at = from;
    std::int64_t units = 0;
    while (at < signs.size() && (signs[at].value == 1 || (at == from && signs[at].value == 5))) {
        units += signs[at].value;
        ++at;
    }
    const std::size_t count = at - from;
    if (count == 0 || at == signs.size()) {
        return std::nullopt;
    }
    const bool isMixed = units > 5 || count == 4;
    const bool isClosed = signs[at - 1].isFinalI && count > 1 && !signs[at - 2].isFinalI;
    const bool isScore = signs[at].value == 10 && at + 1 < signs.size() &&
                         signs[at + 1].value == 10 &&
                         (at + 2 == signs.size() || signs[at + 2].value < 10);
    if (signs[at].value == 100 && (isMixed || isClosed)) {
        return Part{units * 100, count + 1};
    }
    if (isScore && (isMixed || isClosed || units == 5)) {
        return Part{units * 20, count + 2};
    }
    return std::nullopt;
}

// Equal signs before a greater one, or before a run of it, are taken from it: IV, XXC, IIX, IIXX.
std::optional<Part> subtracted(const std::vector<Sign>& signs, std::size_t from) {
    std::size_t at = from;
    while (at < signs.size() && signs[at].value == signs[from].value) {
        ++at;
    }
    const auto count = static_cast<std::int64_t>(at - from);
    if (at == signs.size() || signs[at].value <= signs[from].value || count > 3 ||
        signs[at].value <= count * signs[from].value) {
        return std::nullopt;
    }
    std::size_t end = at + 1;
    while (end < signs.size() && signs[end].value == signs[at].value) {
        ++end;
    }
    const auto greater = static_cast<std::int64_t>(end - at);
    return Part{greater * signs[at].value - count * signs[from].value, end - from};
}

bool repeatsTooOften(const std::vector<Sign>& signs) {
    std::size_t run = 0;
    for (std::size_t i = 0; i < signs.size(); ++i) {
        run = i > 0 && signs[i].value == signs[i - 1].value ? run + 1 : 1;
        const std::int64_t value = signs[i].value;
        const bool isFive = value == 5 || value == 50 || value == 500 || value == 2;
        if (run > (isFive ? 1U : 4U)) {
            return true;
        }
    }
    return false;
}

} // namespace

std::optional<std::int64_t> romanNumber(std::string_view utf8) {
    const auto read = signsOf(utf8);
    const auto signs = read ? withoutApostrophus(*read) : std::nullopt;
    if (!signs || signs->empty() || repeatsTooOften(*signs)) {
        return std::nullopt;
    }
    std::int64_t total = 0;
    std::int64_t previous = 0;
    for (std::size_t at = 0; at < signs->size();) {
        Part part{(*signs)[at].value, 1};
        if (const auto product = multiplied(*signs, at)) {
            part = *product;
        } else if (const auto difference = subtracted(*signs, at)) {
            part = *difference;
        }
        if (part.value <= 0 || (at > 0 && part.value > previous)) {
            return std::nullopt;
        }
        previous = part.value;
        total += part.value;
        at += part.length;
    }
    return total;
}

} // namespace headcap::core
