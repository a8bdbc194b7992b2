#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include "core/collation/leaf_ref.h"
#include "core/collation/term_reader.h"

namespace headcap::core {
namespace {

// A word of ordinary language: three letters or more that are not one letter repeated.
std::size_t wordLength(const GlyphCursor& cursor) {
    std::size_t length = 0;
    bool alike = true;
    while (isLetter(cursor.sign(length)) && cursor.level(length) == GlyphLevel::line) {
        alike = alike && toLower(cursor.sign(length)) == toLower(cursor.sign());
        ++length;
    }
    const bool unsignedMark = length == 3 && cursor.startsWith("chi");
    const bool counted = cursor.isSuperscript(length) && isDigit(cursor.sign(length));
    return length >= 3 && !alike && !unsignedMark && !counted ? length : 0;
}

} // namespace

// Whether words, not marks, stand at the cursor: a word, or two letters or a number before one.
bool TermReader::wordsAhead() const {
    GlyphCursor ahead = m_cursor;
    if (wordLength(ahead) > 0) {
        return true;
    }
    std::size_t letters = 0;
    while (isLetter(ahead.sign(letters))) {
        ++letters;
    }
    const bool alike = letters == 2 && toLower(ahead.sign()) == toLower(ahead.sign(1));
    if (letters == 2 && !alike) {
        ahead.advance(letters);
        const bool pointed = ahead.take(U'.');
        return ahead.skipSpaces() && (wordLength(ahead) > 0 || pointed);
    }
    if (letters == 0 && ahead.takeNumber() > 0) {
        return ahead.skipSpaces() && wordLength(ahead) > 0;
    }
    return ahead.on(U'$');
}

std::size_t TermReader::proseEnd() const {
    int depth = 0;
    bool quotes = false;
    for (std::size_t i = m_cursor.position(); i < m_cursor.end(); ++i) {
        const char32_t sign = m_glyphs[i].sign;
        quotes = sign == U'"' ? !quotes : quotes;
        depth += sign == U'(' || sign == U'[' ? 1 : sign == U')' || sign == U']' ? -1 : 0;
        if (depth > 0 || quotes) {
            continue;
        }
        std::size_t next = i + 1;
        while (next < m_cursor.end() && isSpace(m_glyphs[next].sign)) {
            ++next;
        }
        // "No. 31" does not end a sentence.
        const bool ends = next >= m_cursor.end() ||
                          (next > i + 1 && !(sign == U'.' && isDigit(m_glyphs[next].sign) &&
                                             m_glyphs[next].level == GlyphLevel::line));
        if (sign == U';' || (sign == U'.' && ends) || (sign == U':' && ends)) {
            return i;
        }
    }
    return m_cursor.end();
}

// Words around the formula are set aside, and said to be; what they tell of blanks is kept. After a
// full stop a sentence of words is prose whatever marks it names.
bool TermReader::prose(bool afterPoint) {
    const std::size_t start = m_cursor.position();
    const std::size_t at = m_cursor.byteOffset();
    if (start < m_noWordsUntil) {
        return false;
    }
    const std::size_t end = proseEnd();
    int words = 0;
    bool anyWord = false;
    bool raised = false;
    int depth = 0; // words in parentheses belong to the term before them
    for (GlyphCursor ahead = m_cursor; ahead.position() < end;) {
        const char32_t sign = ahead.sign();
        depth += sign == U'(' || sign == U'[' ? 1 : sign == U')' || sign == U']' ? -1 : 0;
        const std::size_t word = wordLength(ahead);
        const std::size_t length = depth > 0 ? 0 : word;
        anyWord = anyWord || word > 0;
        words += length > 0 ? 1 : 0;
        raised = raised || (ahead.isSuperscript() && isDigit(ahead.sign()));
        std::size_t skip = length;
        while (length == 0 && isLetter(ahead.sign(skip))) {
            ++skip;
        }
        ahead.advance(std::max<std::size_t>(skip, 1));
    }
    if (!anyWord) {
        m_noWordsUntil = end;
        return false;
    }
    const bool sentence = afterPoint ? words >= 2 || (words == 1 && wordsAhead()) : words > 0;
    if (!sentence || (!afterPoint && !wordsAhead() && words < 2)) {
        return false;
    }
    m_cursor.setPosition(end);
    const std::string text = textOf(start, end);
    if (m_cursor.on(U':') && text.size() < 24 && !text.starts_with("after ")) {
        part();
    }
    noteBlanks(text);
    insertionPlace(text);
    if (raised && !afterPoint) {
        problem(at, "'" + text + "' could not be read");
    } else {
        setAside(text);
    }
    return true;
}

// "after 2A3:" says where the gatherings that follow are inserted.
void TermReader::insertionPlace(std::string_view text) {
    m_after.reset();
    if (!m_cursor.on(U':') || !text.starts_with("after ")) {
        return;
    }
    const auto place = parseLeafRef(text.substr(6));
    const SignedLeaf* leaf = place ? std::get_if<SignedLeaf>(&*place) : nullptr;
    if (leaf != nullptr) {
        m_after = LeafTarget{leaf->signature, leaf->leaf};
    }
}

// "108 leaves", "p. [1-2] 3-62 [63-64]", "$3 signed", "H4 blank", "2 prelim. unmarked".
bool TermReader::statement() {
    const std::size_t start = m_cursor.position();
    if (m_out.terms.empty() || m_depth > 0) {
        return preliminaries();
    }
    if (m_cursor.on(U'$')) {
        m_cursor.setPosition(proseEnd());
        setAside(textOf(start, m_cursor.position()));
        return true;
    }
    const int leaves = m_cursor.takeNumber();
    m_cursor.skipSpaces();
    if (leaves > 0 && leaves < 100'000 &&
        (m_cursor.takeWord("leaves") || m_cursor.takeWord("leaf"))) {
        m_out.leavesStated = leaves;
        return true;
    }
    m_cursor.setPosition(start);
    return pagesStated() || blanksStated();
}

// "2 prelim. unmarked", before any gathering.
bool TermReader::preliminaries() {
    const std::size_t start = m_cursor.position();
    const int count = m_cursor.takeNumber();
    m_cursor.skipSpaces();
    if (count <= 0 || count >= 100 || !m_cursor.startsWith("prelim")) {
        m_cursor.setPosition(start);
        return false;
    }
    clauseText();
    Term term;
    term.at = m_glyphs[start].at;
    term.first.kind = SignatureKind::unsignedLeaves;
    term.first.base = "π";
    term.counts = {count};
    term.form = CountForm::raised;
    term.singletons = true;
    push(std::move(term));
    m_out.assumptions.push_back(
        {"'" + textOf(start, m_cursor.position()) + "' is taken as unsigned leaves before the rest",
         Ground::formula});
    return true;
}

// "p. [1-2] 3-62 [63-64]".
bool TermReader::pagesStated() {
    const std::size_t start = m_cursor.position();
    for (const std::string_view unit : {"pp.", "p.", "pages"}) {
        if (m_cursor.startsWith(unit) && isSpace(m_cursor.sign(unit.size()))) {
            std::size_t end = start;
            while (end < m_cursor.end() && m_glyphs[end].sign != U';' &&
                   m_glyphs[end].sign != U'$') {
                ++end;
            }
            m_out.extentStated = textOf(start, end);
            m_cursor.setPosition(end);
            return true;
        }
    }
    return false;
}

// "H4 blank", "A1 and H4 are blank".
bool TermReader::blanksStated() {
    const std::size_t start = m_cursor.position();
    if (start > m_lastBlankWord) {
        return false;
    }
    std::vector<LeafTarget> targets = leafList(false);
    m_cursor.skipSpaces();
    m_cursor.takeWord("is");
    m_cursor.takeWord("are");
    m_cursor.skipSpaces();
    if (!targets.empty() && m_cursor.startsWith("blank")) {
        m_out.blanks.insert(m_out.blanks.end(), targets.begin(), targets.end());
        m_cursor.setPosition(proseEnd());
        return true;
    }
    m_cursor.setPosition(start);
    return false;
}

} // namespace headcap::core
