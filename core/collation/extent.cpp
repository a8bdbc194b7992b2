#include "core/collation/extent.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/collation/glyphs.h"

namespace headcap::core {
namespace {

constexpr int kMostPages = 40'000;
constexpr std::size_t kMostRuns = 2'000;

// A number as written, 1 or xvi.
struct Written {
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
    void step();
    bool takeUnit();
    bool takePlates();
    bool takeWords();
    bool takeVolumes();
    bool bracket();
    void correction();
    void corrected(Written value, std::optional<Written> rangeEnd, std::size_t at);
    void number();
    std::optional<Written> written();
    void push(ExtentRun run, std::size_t at);
    void closeUnit(ExtentUnit unit);
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

// "3 folded plates", "[4] folded leaves of plates", "1 plate": not among the signed leaves.
bool ExtentReader::takePlates() {
    const std::size_t start = m_cursor.position();
    const bool bracketed = m_cursor.take(U'[');
    const int count = m_cursor.takeNumber();
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
    if (count < 1 || count > kMostPages || !plates) {
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

std::optional<Written> ExtentReader::written() {
    if (const int value = m_cursor.takeNumber(); value >= 0) {
        return value <= kMostPages ? std::optional(Written{value}) : std::nullopt;
    }
    std::string letters;
    while (isLatin(m_cursor.sign(letters.size()))) {
        letters.push_back(static_cast<char>(m_cursor.sign(letters.size())));
    }
    const std::optional<int> value = romanValue(letters);
    if (!value) {
        return std::nullopt;
    }
    m_cursor.advance(letters.size());
    const bool upper = letters.front() >= 'A' && letters.front() <= 'Z';
    return Written{*value, upper ? NumeralStyle::romanUpper : NumeralStyle::romanLower};
}

void ExtentReader::push(ExtentRun run, std::size_t at) {
    if (run.count < 0 || run.count > kMostPages || m_out.runs.size() >= kMostRuns) {
        problem(at, "more pages are stated than a book can have");
        return;
    }
    run.part = m_part;
    m_out.runs.push_back(std::move(run));
}

// "[4]" counts; "[1-2]" and, among Bowers's numbers, the next number alone are inferred numbers;
// "[i.e. 224]" corrects; "[=152]" is the true count.
bool ExtentReader::bracket() {
    const std::size_t start = m_cursor.position();
    const std::size_t at = m_cursor.byteOffset();
    m_cursor.advance();
    m_cursor.skipSpaces();
    if (m_cursor.startsWith("i.e") || m_cursor.startsWith("i. e") ||
        m_cursor.startsWith("that is") || m_cursor.on(U'=')) {
        correction();
        return true;
    }
    std::optional<Written> first = written();
    if (!first) {
        std::size_t close = start;
        while (close < m_cursor.end() && m_glyphs[close].sign != U']') {
            ++close;
        }
        const std::string text = textOf(start + 1, close);
        m_cursor.setPosition(std::min(close + 1, m_cursor.end()));
        if (text.find("mis") != text.npos || text.find("blank") != text.npos) {
            m_out.assumptions.push_back({text, Ground::prose});
        } else {
            problem(at, "'[" + text + "]' could not be read");
        }
        return true;
    }
    ExtentRun run;
    run.count = first->value;
    if (m_cursor.take(U'+')) {
        m_out.atLeast = true;
    }
    if (m_cursor.take(U'-')) {
        const std::optional<Written> last = written();
        if (!last || last->value < first->value) {
            problem(at, "the bracketed range runs backwards");
            return true;
        }
        run.count = last->value - first->value + 1;
        run.first = PrintedNumber{first->value, first->style, m_sequence};
        run.inferred = true;
        m_lastNumber = last->value;
    } else if (m_bowers && m_lastNumber > 0 && first->value == m_lastNumber + 1) {
        run.count = 1;
        run.first = PrintedNumber{first->value, first->style, m_sequence};
        run.inferred = true;
        m_lastNumber = first->value;
    }
    push(run, at);
    while (!m_cursor.atEnd() && !m_cursor.on(U']') && !m_cursor.on(U',') && !m_cursor.on(U';')) {
        m_cursor.advance(); // "[2 unnumbered (blank)]"
    }
    if (!m_cursor.take(U']')) {
        assume("a closing bracket is missing after '" + textOf(start, m_cursor.position()) + "'");
    }
    return true;
}

void ExtentReader::correction() {
    const std::size_t at = m_cursor.byteOffset();
    const bool trueCount = m_cursor.take(U'=');
    while (!m_cursor.atEnd() && !isDigit(m_cursor.sign()) && !m_cursor.on(U']')) {
        GlyphCursor ahead = m_cursor;
        const bool word = isLatin(m_cursor.sign());
        while (isLatin(ahead.sign())) {
            ahead.advance();
        }
        if (word && (m_cursor.startsWith("i.e") || m_cursor.startsWith("i. e") ||
                     m_cursor.startsWith("that") || m_cursor.startsWith("is") ||
                     m_cursor.startsWith("e"))) {
            m_cursor = ahead;
        } else if (word) {
            break;
        } else {
            m_cursor.advance();
        }
    }
    const std::optional<Written> value = written();
    std::optional<Written> end;
    if (m_cursor.take(U'-')) {
        end = written();
    }
    while (!m_cursor.atEnd() && !m_cursor.on(U']') && !m_cursor.on(U',')) {
        m_cursor.advance();
    }
    m_cursor.take(U']');
    if (!value || m_out.runs.empty()) {
        problem(at, "a correction could not be read");
        return;
    }
    if (trueCount) {
        int sum = 0;
        for (const ExtentRun& run : m_out.runs) {
            sum += run.first ? run.count : 0;
        }
        if (sum != value->value) {
            assume("[=" + std::to_string(value->value) + "] is stated where the numbers give " +
                   std::to_string(sum));
        }
        return;
    }
    corrected(*value, end, at);
}

void ExtentReader::corrected(Written value, std::optional<Written> rangeEnd, std::size_t at) {
    ExtentRun& run = m_out.runs.back();
    if (rangeEnd) {
        run.first = PrintedNumber{value.value, value.style, m_sequence};
        run.count = std::max(0, rangeEnd->value - value.value + 1);
        return;
    }
    int whole = 0;
    for (std::size_t i = m_open; i < m_out.runs.size(); ++i) {
        whole += m_out.runs[i].count;
    }
    if (whole == value.value && m_out.runs.size() - m_open > 1) {
        return; // the sum of the sequences, stated for all of them
    }
    const int start = run.first ? run.first->value : 1;
    const int printed = run.first ? start + run.count - 1 : run.count;
    const bool asLast = value.value >= start;
    // Behind a range it may be its last number or its count, or the count of all sequences so far.
    bool other = false;
    if (start > 1) {
        other = (static_cast<unsigned>(m_reading) >> static_cast<unsigned>(m_choices) & 1U) != 0;
        ++m_choices;
    }
    const std::string text = "'[i.e. " + std::to_string(value.value) + "]'";
    if (other && !asLast) {
        assume(text + " is taken as the number of pages of all the sequences together");
        run.count = std::max(0, run.count + value.value - whole);
        return;
    }
    if (other) {
        assume(text + " is taken as the number of pages, not as the last page");
    }
    run.count = asLast && !other && run.first ? value.value - start + 1 : value.value;
    run.foliated = run.first && start == 1 && value.value == 2 * printed;
    if (run.count > kMostPages) {
        run.count = 0;
        problem(at, "more pages are stated than a book can have");
    }
    m_lastNumber = value.value;
}

void ExtentReader::number() {
    const std::size_t at = m_cursor.byteOffset();
    if (const int sequence = m_cursor.takeNumber(GlyphLevel::superscript); sequence > 0) {
        m_sequence = std::min(sequence, 99);
        if (m_cursor.on(U'[')) {
            return;
        }
    }
    const std::size_t before = m_cursor.position();
    if (before > 0 && isLatin(m_cursor.sign()) && m_glyphs[before - 1].sign == U'.') {
        return; // "p.c": a letter that fell against a full stop is no numeral
    }
    std::optional<Written> first = written();
    if (!first) {
        return;
    }
    if (m_cursor.take(U']')) {
        assume("an opening bracket is missing before " + std::to_string(first->value));
        push({ExtentUnit::pages, first->value}, at);
        return;
    }
    if (m_cursor.take(U'+')) {
        m_out.atLeast = true;
    }
    ExtentRun run;
    if (m_cursor.take(U'-')) {
        const std::optional<Written> last = written();
        if (!last) {
            problem(at, "the last number of a range is expected");
            return;
        }
        int end = last->value;
        if (end < first->value) {
            // A printed last number that is out: what follows in brackets may correct it.
            GlyphCursor ahead = m_cursor;
            ahead.skipSpaces();
            if (!ahead.startsWith("[i.e")) {
                problem(at, "'" + std::to_string(first->value) + "-" + std::to_string(end) +
                                "' runs backwards");
                return;
            }
            end = first->value;
        }
        run.first = PrintedNumber{first->value, first->style, m_sequence};
        run.count = end - first->value + 1;
        m_lastNumber = end;
    } else {
        run.first = PrintedNumber{1, first->style, m_sequence};
        run.count = first->value;
        m_lastNumber = first->value;
    }
    push(run, at);
    // "563, [i.e. 557]": the comma before a correction is a slip.
    GlyphCursor ahead = m_cursor;
    ahead.take(U',');
    ahead.skipSpaces();
    if (ahead.startsWith("[i.e")) {
        m_cursor = ahead;
    }
}

} // namespace

bool Extent::counted() const {
    return std::any_of(runs.begin(), runs.end(), [](const ExtentRun& run) {
        return run.unit != ExtentUnit::columns && run.count > 0;
    });
}

Extent readExtent(std::string_view statement, int reading) {
    return ExtentReader(statement, reading).read();
}

int leafTotal(const Extent& extent) {
    int leaves = 0;
    int pages = 0;
    int part = 0;
    for (const ExtentRun& run : extent.runs) {
        if (run.part != part) {
            leaves += (pages + 1) / 2;
            pages = 0;
            part = run.part;
        }
        pages += run.unit == ExtentUnit::pages ? run.count : 0;
        leaves += run.unit == ExtentUnit::leaves ? run.count : 0;
    }
    return leaves + (pages + 1) / 2;
}

int pageTotal(const Extent& extent) {
    int pages = 0;
    for (const ExtentRun& run : extent.runs) {
        pages += run.unit == ExtentUnit::pages    ? run.count
                 : run.unit == ExtentUnit::leaves ? 2 * run.count
                                                  : 0;
    }
    return pages;
}

} // namespace headcap::core
