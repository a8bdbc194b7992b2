// What is written, one sign at a time: UTF-8 decoded, superscripts and subscripts told apart from
// the line however they were typed (⁸, ^8, ^8^, <sup>8</sup>, ₄, _4_, <sub>4</sub>), and the many
// dashes, quotes and raised dots brought to one of each. Bytes that are no UTF-8 become U+FFFD.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace headcap::core {

enum class GlyphLevel : unsigned char { line, superscript, subscript };

struct Glyph {
    char32_t sign = 0;
    GlyphLevel level = GlyphLevel::line;
    std::size_t at = 0; // byte offset of its first byte in the text read
};

[[nodiscard]] std::vector<Glyph> toGlyphs(std::string_view utf8);

void appendUtf8(std::string& out, char32_t sign);
[[nodiscard]] std::string toUtf8(char32_t sign);

[[nodiscard]] bool isDigit(char32_t sign);
[[nodiscard]] bool isLatin(char32_t sign);
[[nodiscard]] bool isLetter(char32_t sign); // Latin with its accents, Greek, Cyrillic, Hebrew
[[nodiscard]] bool isUpper(char32_t sign);
[[nodiscard]] char32_t toLower(char32_t sign); // for the letters of isLetter
[[nodiscard]] bool isSpace(char32_t sign);

// Decimal digits as they stand above or below the line.
[[nodiscard]] std::string superscript(int number);
[[nodiscard]] std::string subscript(int number);

// A place in a row of glyphs, moved forward by whoever reads. Past the end `sign()` is 0.
class GlyphCursor {
public:
    explicit GlyphCursor(const std::vector<Glyph>& glyphs, std::size_t textSize)
        : m_glyphs(&glyphs), m_end(glyphs.size()), m_textSize(textSize) {}

    [[nodiscard]] bool atEnd() const { return m_at >= m_end; }
    [[nodiscard]] char32_t sign(std::size_t ahead = 0) const;
    [[nodiscard]] GlyphLevel level(std::size_t ahead = 0) const;
    [[nodiscard]] bool on(char32_t sign, std::size_t ahead = 0) const; // on the line
    [[nodiscard]] bool isSuperscript(std::size_t ahead = 0) const;
    [[nodiscard]] bool isSubscript(std::size_t ahead = 0) const;
    [[nodiscard]] std::size_t byteOffset() const;

    void advance(std::size_t by = 1) { m_at = m_at + by < m_end ? m_at + by : m_end; }
    bool take(char32_t sign); // on the line
    bool skipSpaces();        // true when there were any
    // Takes `word` (ASCII, any case) where it stands whole, not as the start of a longer word.
    bool takeWord(std::string_view word);
    [[nodiscard]] bool startsWith(std::string_view ascii) const; // any case
    // Decimal digits of one level; -1 where there are none, a number no book reaches where too
    // many.
    int takeNumber(GlyphLevel level = GlyphLevel::line);

    [[nodiscard]] std::size_t position() const { return m_at; }
    void setPosition(std::size_t at) { m_at = at; }
    [[nodiscard]] std::size_t end() const { return m_end; }
    // Reading stops before `end` until it is set back.
    void setEnd(std::size_t end) { m_end = end; }

private:
    const std::vector<Glyph>* m_glyphs;
    std::size_t m_at = 0;
    std::size_t m_end;
    std::size_t m_textSize;
};

inline constexpr int kNumberTooLarge = 1'000'000'000;

} // namespace headcap::core
