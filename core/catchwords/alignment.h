// How far a word is from the beginning of a text, letter by letter, in hundredths of a letter.
// Signs of abbreviation stand for any of their spellings at no cost; what compositors did freely
// (doubled letters, th, ck, tz, ie) costs little; a slip costs 100.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

namespace headcap::core {

inline constexpr int kOneLetter = 100;

class PrefixAlignment {
public:
    // Both in loose letters (letters.h).
    PrefixAlignment(std::u32string_view word, std::u32string_view text);

    // The cost of the whole word against exactly the first `length` letters of the text.
    [[nodiscard]] int costAt(std::size_t length) const;
    // The least cost against any beginning of the text.
    [[nodiscard]] int leastCost() const;
    [[nodiscard]] bool usedAbbreviation() const { return m_abbreviated; }

private:
    void relax(std::size_t row, std::size_t column, int cost);
    void expand(std::size_t row, std::size_t column);
    [[nodiscard]] int& cell(std::size_t row, std::size_t column) {
        return m_costs[row * m_columns + column];
    }

    std::u32string_view m_word;
    std::u32string_view m_text;
    std::size_t m_columns = 0;
    std::vector<int> m_costs;
    bool m_abbreviated = false;
};

} // namespace headcap::core
