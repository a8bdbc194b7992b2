#include "core/catchwords/alignment.h"

#include <algorithm>
#include <limits>

#include "core/catchwords/abbreviation_signs.h"

namespace headcap::core {
namespace {

constexpr int kFar = std::numeric_limits<int>::max() / 4;
constexpr std::size_t kMostLetters = 40;
constexpr std::size_t kMostLeftOut = 5; // letters that one stroke can stand for

char32_t before(std::u32string_view text, std::size_t at) {
    return at > 0 ? text[at - 1] : 0;
}

// What it costs that one text has a letter more than the other.
int extraLetter(std::u32string_view text, std::size_t at) {
    const char32_t c = text[at];
    const char32_t last = before(text, at);
    const char32_t next = at + 1 < text.size() ? text[at + 1] : 0;
    if (at > 0 && (c == last || c == next))
        return next == 0 ? 50 : 25; // at the end it may be another word: den, denn
    if (at == 0)
        return kOneLetter;
    if (c == 'h' && std::u32string_view(U"tracgeouip").find(last) != std::u32string_view::npos)
        return 50;
    if ((c == 'e' && last == 'i') || (c == 'c' && next == 'k') || (c == 't' && next == 'z') ||
        (c == 'd' && next == 't') || (c == 't' && last == 'd') || (c == 'b' && last == 'm'))
        return 40;
    return kOneLetter;
}

bool either(char32_t a, char32_t b, char32_t x, char32_t y) {
    return (a == x && b == y) || (a == y && b == x);
}

int otherLetter(char32_t a, char32_t b) {
    if (a == b)
        return 0;
    if (either(a, b, 'k', 'c') || either(a, b, 'd', 't') || either(a, b, 'f', 'u') ||
        either(a, b, 's', 'z') || either(a, b, 'c', 'z') || either(a, b, 'b', 'p'))
        return 50;
    return kOneLetter;
}

} // namespace

PrefixAlignment::PrefixAlignment(std::u32string_view word, std::u32string_view text)
    : m_word(word.substr(0, kMostLetters)),
      m_text(text.substr(0, m_word.size() + 2 * kMostLeftOut)), m_columns(m_text.size() + 1),
      m_costs((m_word.size() + 1) * m_columns, kFar) {
    cell(0, 0) = 0;
    for (std::size_t row = 0; row <= m_word.size(); ++row) {
        for (std::size_t column = 0; column <= m_text.size(); ++column)
            expand(row, column);
    }
    const auto isSign = [](char32_t c) { return isAbbreviationSign(c); };
    m_abbreviated = std::ranges::any_of(m_word, isSign) || std::ranges::any_of(m_text, isSign);
}

void PrefixAlignment::relax(std::size_t row, std::size_t column, int cost) {
    if (row <= m_word.size() && column <= m_text.size())
        cell(row, column) = std::min(cell(row, column), cost);
}

void PrefixAlignment::expand(std::size_t row, std::size_t column) {
    const int here = cell(row, column);
    if (here >= kFar)
        return;
    const bool inWord = row < m_word.size();
    const bool inText = column < m_text.size();
    const auto spellOut = [&](std::u32string_view signs, std::size_t at,
                              std::u32string_view letters, std::size_t from, bool signInWord) {
        for (const std::u32string_view spelling : expansionsOf(signs[at])) {
            const auto step = [&](std::size_t length) {
                signInWord ? relax(row + 1, column + length, here)
                           : relax(row + length, column + 1, here);
            };
            if (spelling == kAnyLetters) {
                for (std::size_t length = 1; length <= kMostLeftOut; ++length)
                    step(length);
            } else if (letters.substr(from, spelling.size()) == spelling) {
                step(spelling.size());
            }
        }
    };
    if (inWord && isAbbreviationSign(m_word[row]))
        spellOut(m_word, row, m_text, column, true);
    if (inText && isAbbreviationSign(m_text[column]))
        spellOut(m_text, column, m_word, row, false);
    if (inWord && inText)
        relax(row + 1, column + 1, here + otherLetter(m_word[row], m_text[column]));
    if (inWord)
        relax(row + 1, column, here + extraLetter(m_word, row));
    if (inText && row > 0)
        relax(row, column + 1, here + extraLetter(m_text, column) * (inWord ? 1 : 2));
}

int PrefixAlignment::costAt(std::size_t length) const {
    return length < m_columns ? m_costs[m_word.size() * m_columns + length] : kFar;
}

int PrefixAlignment::leastCost() const {
    const auto last = m_costs.begin() + static_cast<std::ptrdiff_t>(m_word.size() * m_columns);
    return *std::min_element(last, m_costs.end());
}

} // namespace headcap::core
