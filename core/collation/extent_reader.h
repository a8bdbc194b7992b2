// Reads a statement of extent into its runs. Internal to the extent's reader: extent.h is what
// others use.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/collation/extent.h"
#include "core/collation/glyphs.h"

namespace headcap::core {

inline constexpr int kMostPagesStated = 40'000;

// A number as written, 1 or xvi.
struct WrittenNumber {
    int value = 0;
    NumeralStyle style = NumeralStyle::arabic;
};

class ExtentReader {
public:
    ExtentReader(std::string_view text, int reading)
        : m_text(text), m_glyphs(toGlyphs(text)), m_cursor(m_glyphs, text.size()),
          m_reading(reading) {
        const bool escaped = text.find('\\') != text.npos;
        bool commas = false;
        int depth = 0;
        for (Glyph& glyph : m_glyphs) {
            if (escaped && (glyph.sign == U'\\' || glyph.sign == U'!')) {
                glyph.sign = glyph.sign == U'\\' ? U'[' : U']';
            }
            depth += glyph.sign == U'[' ? 1 : glyph.sign == U']' ? -1 : 0;
            commas = commas || (depth == 0 && glyph.sign == U',');
            m_bowers = m_bowers || (depth > 0 && glyph.sign == U'-');
        }
        m_bowers = m_bowers && !commas ? true : m_bowers && text.find("[i.e") == text.npos;
    }

    Extent read();

private:
    // Terms and units: extent_reader.cpp.
    void step();
    bool takeUnit();
    int takePlateNumeral();
    bool takePlates();
    bool takeWords();
    bool takeVolumes();
    void closeUnit(ExtentUnit unit);

    // Numbers, and what brackets say of them: extent_numbers.cpp.
    bool bracket();
    void correction();
    void corrected(WrittenNumber value, std::optional<WrittenNumber> rangeEnd, std::size_t at);
    void number();
    std::optional<WrittenNumber> written();
    void push(ExtentRun run, std::size_t at);

    void problem(std::size_t at, std::string message) {
        if (m_out.problems.size() < 20) {
            m_out.problems.push_back({at, std::move(message), true});
        }
    }
    void assume(std::string what) {
        m_out.assumptions.push_back({std::move(what), Ground::extent});
    }
    [[nodiscard]] std::string textOf(std::size_t from, std::size_t to) const;

    std::string_view m_text;
    std::vector<Glyph> m_glyphs;
    GlyphCursor m_cursor;
    int m_reading;
    int m_choices = 0;
    bool m_bowers = false;
    std::size_t m_open = 0; // runs from here on wait for their unit
    int m_part = 0;
    int m_sequence = 1;
    int m_lastNumber = 0;
    bool m_leading = false; // "p. 639-642": the unit stands first
    bool m_end = false;
    Extent m_out;
};

} // namespace headcap::core
