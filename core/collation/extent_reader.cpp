#include "core/collation/extent_reader.h"

#include <array>

namespace headcap::core {

std::string ExtentReader::textOf(std::size_t from, std::size_t to) const {
    const auto byteAt = [&](std::size_t i) {
        return i < m_glyphs.size() ? m_glyphs[i].at : m_text.size();
    };
    return std::string(m_text.substr(byteAt(from), byteAt(to) - byteAt(from)));
}

Extent ExtentReader::read() {
    while (!m_cursor.atEnd() && !m_end) {
        const std::size_t before = m_cursor.position();
        step();
        if (m_cursor.position() == before) {
            const std::size_t at = m_cursor.byteOffset();
            while (!m_cursor.atEnd() && !isSpace(m_cursor.sign()) && !m_cursor.on(U',')) {
                m_cursor.advance();
            }
            if (m_cursor.position() == before) {
                m_cursor.advance();
            }
            problem(at, "'" + textOf(before, m_cursor.position()) + "' could not be read");
        }
    }
    if (m_open < m_out.runs.size()) {
        if (!m_leading && !m_bowers) {
            assume("no unit is given: taken as pages");
        }
        closeUnit(ExtentUnit::pages);
    }
    if (m_out.runs.empty() && m_out.problems.empty()) {
        problem(0, "no number of pages or leaves was found");
    }
    m_out.readings = 1 << std::min(m_choices, 3);
    return std::move(m_out);
}

void ExtentReader::step() {
    if (m_cursor.skipSpaces() || m_cursor.take(U',') || m_cursor.take(U'.') ||
        m_cursor.take(U'(') || m_cursor.take(U')')) {
        return;
    }
    if (m_cursor.take(U'+')) {
        m_out.atLeast = true;
        return;
    }
    if (m_cursor.on(U'=')) { // "(= 908)": the total, said again
        const std::size_t start = m_cursor.position();
        while (!m_cursor.atEnd() && !m_cursor.on(U')') && !m_cursor.on(U';')) {
            m_cursor.advance();
        }
        m_out.assumptions.push_back({textOf(start, m_cursor.position()), Ground::prose});
        return;
    }
    if (m_cursor.take(U';')) {
        m_cursor.skipSpaces();
        GlyphCursor ahead = m_cursor;
        const int measure = ahead.takeNumber();
        ahead.skipSpaces();
        if (measure > 0 && (ahead.takeWord("cm") || ahead.takeWord("mm"))) {
            m_end = true; // the height of the book
            return;
        }
        ++m_part;
        m_sequence = 1;
        return;
    }
    if (m_cursor.take(U':')) {
        m_end = m_open == m_out.runs.size() && !m_out.runs.empty(); // illustrations follow
        return;
    }
    if (takePlates() || takeVolumes() || takeUnit() || takeWords()) {
        return;
    }
    if (m_cursor.on(U'[')) {
        bracket();
        return;
    }
    number();
}

bool ExtentReader::takeUnit() {
    struct Word {
        std::string_view text;
        ExtentUnit unit;
    };
    static constexpr std::array kWords{
        Word{"pages", ExtentUnit::pages},      Word{"page", ExtentUnit::pages},
        Word{"pp", ExtentUnit::pages},         Word{"p", ExtentUnit::pages},
        Word{"leaves", ExtentUnit::leaves},    Word{"leaf", ExtentUnit::leaves},
        Word{"ff", ExtentUnit::leaves},        Word{"fol", ExtentUnit::leaves},
        Word{"folios", ExtentUnit::leaves},    Word{"f", ExtentUnit::leaves},
        Word{"columns", ExtentUnit::columns},  Word{"col", ExtentUnit::columns},
        Word{"sheets", ExtentUnit::leaves},    Word{"sheet", ExtentUnit::leaves},
        Word{"broadside", ExtentUnit::leaves},
    };
    for (const Word& word : kWords) {
        if (m_cursor.takeWord(word.text)) {
            m_cursor.take(U'.');
            if (m_open == m_out.runs.size()) {
                m_leading = true;
            } else {
                closeUnit(word.unit);
            }
            return true;
        }
    }
    if (m_cursor.startsWith("l.") && m_open < m_out.runs.size()) {
        m_cursor.advance(2);
        closeUnit(ExtentUnit::leaves);
        return true;
    }
    return false;
}

void ExtentReader::closeUnit(ExtentUnit unit) {
    for (; m_open < m_out.runs.size(); ++m_open) {
        m_out.runs[m_open].unit = unit;
    }
}

// "XXIV" of plates that are numbered so; 0 where no such number stands. "c. plates" is about some.
int ExtentReader::takePlateNumeral() {
    std::string word;
    while (isLatin(m_cursor.sign(word.size()))) {
        word.push_back(static_cast<char>(m_cursor.sign(word.size())));
    }
    const bool isNumeral = word.size() > 1 || word.find_first_of("ivxIVX") == 0;
    const auto value = isNumeral ? romanValue(word) : std::nullopt;
    if (value) {
        m_cursor.advance(word.size());
    }
    return value.value_or(0);
}

// "3 folded plates", "[4] folded leaves of plates", "XXIV plates": not among the signed leaves.
bool ExtentReader::takePlates() {
    const std::size_t start = m_cursor.position();
    const bool bracketed = m_cursor.take(U'[');
    const int number = m_cursor.takeNumber();
    const int count = number > 0 ? number : takePlateNumeral();
    if (bracketed) {
        m_cursor.take(U']');
    }
    m_cursor.skipSpaces();
    bool described = false;
    for (const std::string_view kind :
         {"folded ", "double ", "engraved ", "col. ", "unnumbered "}) {
        if (m_cursor.startsWith(kind)) {
            m_cursor.advance(kind.size());
            described = true;
        }
    }
    const bool plates =
        (described && (m_cursor.takeWord("leaves") || m_cursor.takeWord("leaf"))) ||
        m_cursor.takeWord("plates") || m_cursor.takeWord("plate") || m_cursor.takeWord("tables") ||
        m_cursor.takeWord("table") || m_cursor.takeWord("maps") || m_cursor.takeWord("map") ||
        m_cursor.startsWith("leaves of plates") || m_cursor.startsWith("leaf of plates") ||
        m_cursor.startsWith("leaves of tables") || m_cursor.startsWith("p. of plates");
    if (count < 1 || count > kMostPagesStated || !plates) {
        m_cursor.setPosition(start);
        return false;
    }
    m_out.plates += count;
    while (!m_cursor.atEnd() && !m_cursor.on(U',') && !m_cursor.on(U';') && !m_cursor.on(U':')) {
        m_cursor.advance();
    }
    return true;
}

bool ExtentReader::takeVolumes() {
    const std::size_t start = m_cursor.position();
    const int count = m_cursor.takeNumber();
    m_cursor.skipSpaces();
    for (const std::string_view word :
         {"volumes", "volume", "vols", "vol", "v", "pts", "parts", "part"}) {
        if (count > 0 && m_cursor.takeWord(word)) {
            m_cursor.take(U'.');
            return true;
        }
    }
    m_cursor.setPosition(start);
    return false;
}

// Words that are no numbers: "ca.", "in various pagings", "folded map", illustrations.
bool ExtentReader::takeWords() {
    if (m_cursor.startsWith("ca.") || m_cursor.startsWith("c.") || m_cursor.takeWord("about")) {
        m_out.approximate = true;
        while (!m_cursor.atEnd() && !isDigit(m_cursor.sign())) {
            m_cursor.advance();
        }
        return true;
    }
    std::string word;
    while (isLatin(m_cursor.sign(word.size()))) {
        word.push_back(static_cast<char>(m_cursor.sign(word.size())));
    }
    if (word.size() < 2 || romanValue(word)) {
        return false;
    }
    const std::size_t start = m_cursor.position();
    while (!m_cursor.atEnd() && !m_cursor.on(U',') && !m_cursor.on(U';') && !m_cursor.on(U':') &&
           !m_cursor.on(U'[') && !m_cursor.on(U'(') && !m_cursor.on(U')')) {
        m_cursor.advance();
    }
    m_out.assumptions.push_back({textOf(start, m_cursor.position()), Ground::prose});
    return true;
}

} // namespace headcap::core
