#include "core/collation/term_reader.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/collation/format_name.h"
#include "core/collation/printed_number.h"

namespace headcap::core {
namespace {

constexpr int kDeepest = 8;
constexpr std::size_t kMostTerms = 5'000;
constexpr std::size_t kMostProblems = 50;
constexpr std::size_t kLongest = 10'000; // signs; the longest statement known has some 700

// For each bracket the place of the one that closes it, or the end.
std::vector<std::size_t> pairBrackets(const std::vector<Glyph>& glyphs) {
    std::vector<std::size_t> partners(glyphs.size(), glyphs.size());
    std::vector<std::size_t> round;
    std::vector<std::size_t> square;
    for (std::size_t i = 0; i < glyphs.size(); ++i) {
        const char32_t sign = glyphs[i].sign;
        auto& open = sign == U'(' || sign == U')' ? round : square;
        if (sign == U'(' || sign == U'[') {
            open.push_back(i);
        } else if ((sign == U')' || sign == U']') && !open.empty()) {
            partners[open.back()] = i;
            open.pop_back();
        }
    }
    return partners;
}

} // namespace

TermReader::TermReader(std::string_view formula)
    : m_text(formula), m_glyphs(toGlyphs(formula)), m_cursor(m_glyphs, formula.size()) {
    // The Italian union catalogue's \…! stands for square brackets.
    const bool escaped = formula.find('\\') != formula.npos && formula.find('!') != formula.npos;
    for (Glyph& glyph : m_glyphs) {
        if (escaped && (glyph.sign == U'\\' || glyph.sign == U'!')) {
            glyph.sign = glyph.sign == U'\\' ? U'[' : U']';
        }
    }
    // "A-Dp4s": the marks that raised the 4 fell into the text. Not ours to repair.
    for (std::size_t i = 1; i + 2 < m_glyphs.size(); ++i) {
        std::size_t end = i + 1;
        while (end < m_glyphs.size() && isDigit(m_glyphs[end].sign)) {
            ++end;
        }
        const bool ends = end + 1 >= m_glyphs.size() || !isLetter(m_glyphs[end + 1].sign);
        if (m_glyphs[i].sign == U'p' && isUpper(m_glyphs[i - 1].sign) && end > i + 1 &&
            end < m_glyphs.size() && m_glyphs[end].sign == U's' && ends) {
            m_glyphs[i].sign = 0xFFFD;
        }
    }
    m_partners = pairBrackets(m_glyphs);
    for (GlyphCursor ahead = m_cursor; !ahead.atEnd(); ahead.advance()) {
        m_lastBlankWord = ahead.startsWith("blank") ? ahead.position() : m_lastBlankWord;
    }
}

Terms TermReader::read() {
    if (m_glyphs.size() > kLongest) {
        m_cursor.setEnd(kLongest);
    }
    m_cursor.skipSpaces();
    label();
    items();
    repeatPart();
    if (m_glyphs.size() > kLongest) {
        problem(m_glyphs[kLongest].at, "no statement is so long: from here on it was not read");
    }
    if (m_out.terms.empty() && m_out.problems.empty()) {
        problem(m_cursor.byteOffset(), "no gathering was found");
    }
    return std::move(m_out);
}

void TermReader::items() {
    while (!m_cursor.atEnd()) {
        const std::size_t before = m_cursor.position();
        item();
        if (m_cursor.position() == before) {
            unreadable();
        }
    }
}

void TermReader::item() {
    if (m_cursor.skipSpaces() || m_cursor.take(U',') || m_cursor.take(U':')) {
        return;
    }
    if (m_cursor.on(U';') || m_cursor.on(U'.')) {
        if (m_cursor.on(U';')) {
            part();
        }
        m_after.reset();
        m_cursor.advance();
        m_cursor.skipSpaces();
        if (!bookLabel() && !statement()) {
            prose(true);
        }
        return;
    }
    if (bookLabel() || partLabel() || statement() || multiplication()) {
        return;
    }
    if (m_cursor.on(U'(')) {
        const std::size_t start = m_cursor.position();
        std::optional<Term> term = run();
        const bool apart = start == 0 || isSpace(m_glyphs[start - 1].sign);
        if (term && term->first.parenthesised &&
            (term->form != CountForm::none || term->last || apart)) {
            push(std::move(*term));
            return;
        }
        if (term && !term->first.parenthesised) {
            push(std::move(*term)); // a mark made of brackets, (:)
            return;
        }
        m_cursor.setPosition(start);
        Term none;
        parenthesis(m_out.terms.empty() ? none : m_out.terms.back());
        return;
    }
    if ((m_cursor.on(U'[') && bracketItem()) || looseCount()) {
        return;
    }
    if (m_cursor.on(U'+')) {
        plus();
        return;
    }
    if (wordsAhead() && prose(false)) {
        return;
    }
    std::optional<Term> term = m_cursor.on(U'"') || m_cursor.on(U'\'') ? quoted() : run();
    if (term) {
        push(std::move(*term));
        return;
    }
    prose(false);
}

// "v.1, 4, 5: A² B-D⁴" is three volumes alike.
void TermReader::repeatPart() {
    const int times = std::exchange(m_alike, 1);
    const std::size_t end = m_out.terms.size();
    for (int i = 1; i < times && end < kMostTerms; ++i) {
        ++m_part;
        for (std::size_t from = m_partStart; from < end; ++from) {
            Term again = m_out.terms[from];
            again.part = m_part;
            m_out.terms.push_back(std::move(again));
        }
    }
    m_partStart = m_out.terms.size();
}

void TermReader::push(Term term) {
    if (m_after && !m_out.terms.empty()) {
        // "after 2A3: …" in prose: inserted there, in the gathering it names.
        LeafChange change;
        change.kind = LeafChange::Kind::added;
        change.at = term.at;
        change.leaves = {*m_after};
        change.addedTerms.push_back(std::move(term));
        m_out.terms.back().changes.push_back(std::move(change));
        return;
    }
    if (m_out.terms.size() >= kMostTerms) {
        return;
    }
    term.part = m_part;
    term.allInferred = term.allInferred || m_inferred;
    m_out.terms.push_back(std::move(term));
}

void TermReader::part() {
    repeatPart();
    if (!m_out.terms.empty() && m_part < 999 && m_out.terms.back().part == m_part) {
        ++m_part;
    }
}

// What opens with a square bracket and is no mark: a change, a note, or inferred gatherings
// together.
bool TermReader::bracketItem() {
    const std::size_t start = m_cursor.position();
    const std::size_t close = closing(start);
    const char32_t next = m_cursor.sign(1);
    if (close >= m_cursor.end()) {
        problem(m_cursor.byteOffset(), "a bracket is opened here and never closed");
        m_cursor.advance();
        return true;
    }
    const bool sign = next == U'-' || next == U'+' || next == U'±';
    if (sign && !m_out.terms.empty()) {
        parenthesis(m_out.terms.back());
        return true;
    }
    if (next == U'=') {
        m_cursor.advance(2);
        const int stated = m_cursor.takeNumber();
        if (stated > 0 && m_cursor.position() == close && !m_out.terms.empty()) {
            m_out.terms.back().statedGatherings = stated;
        } else {
            setAside(textOf(start + 1, close));
        }
        m_cursor.setPosition(close + 1);
        return true;
    }
    if (next == U'$') {
        setAside(textOf(start + 1, close));
        m_cursor.setPosition(close + 1);
        return true;
    }
    if (std::optional<Term> term = run()) {
        push(std::move(*term));
        return true;
    }
    m_cursor.setPosition(start);
    group(close - start);
    return true;
}

// "[A⁴ B²]", "[1-4⁸]", "[C-F]⁴": all of it inferred; a count behind the bracket is for what lacks
// one.
void TermReader::group(std::size_t length) {
    const std::size_t start = m_cursor.position();
    const std::size_t end = m_cursor.end();
    const std::size_t from = m_out.terms.size();
    const bool was = std::exchange(m_inferred, true);
    m_cursor.advance();
    m_cursor.setEnd(start + length);
    if (++m_depth > kDeepest) {
        problem(m_cursor.byteOffset(), "brackets stand in brackets too deeply");
        m_cursor.setPosition(m_cursor.end());
    }
    items();
    --m_depth;
    m_inferred = was;
    m_cursor.setEnd(end);
    m_cursor.setPosition(start + length + 1);
    Term outside;
    if (m_out.terms.size() > from && count(outside) && outside.only.empty()) {
        for (std::size_t i = from; i < m_out.terms.size(); ++i) {
            if (m_out.terms[i].counts.empty()) {
                m_out.terms[i].counts = outside.counts;
                m_out.terms[i].form = outside.form;
            }
        }
    }
}

// "A-O⁴+" goes on; "A⁴ + B⁴" and "+ 2 leaves" stand outside parentheses.
void TermReader::plus() {
    m_cursor.advance();
    GlyphCursor ahead = m_cursor;
    ahead.skipSpaces();
    const bool ends = ahead.atEnd() || ahead.on(U';') || ahead.on(U'.') || ahead.on(U',');
    if (ends && !m_out.terms.empty()) {
        m_out.terms.back().continues = true;
    }
}

// What nothing else could take: reported with its place, up to the next space or separator.
void TermReader::unreadable() {
    const std::size_t start = m_cursor.position();
    const std::size_t at = m_cursor.byteOffset();
    do {
        m_cursor.advance();
    } while (!m_cursor.atEnd() && !isSpace(m_cursor.sign()) && !m_cursor.on(U',') &&
             !m_cursor.on(U';'));
    const std::string found = textOf(start, m_cursor.position());
    const bool bare = !m_out.terms.empty() && m_out.terms.back().counts.empty() && start > 0 &&
                      !isSpace(m_glyphs[start - 1].sign);
    if (bare) {
        const Term& before = m_out.terms.back();
        problem(at, "after '" + toText(before.last ? *before.last : before.first) +
                        "' a leaf count is expected, found '" + found + "'");
    } else {
        problem(at, "a signature is expected, found '" + found + "'");
    }
}

std::string TermReader::textOf(std::size_t from, std::size_t to) const {
    const auto byteAt = [&](std::size_t i) {
        return i < m_glyphs.size() ? m_glyphs[i].at : m_text.size();
    };
    std::size_t begin = byteAt(from);
    std::size_t end = byteAt(to);
    while (begin < end && m_text[begin] == ' ') {
        ++begin;
    }
    while (begin < end && m_text[end - 1] == ' ') {
        --end;
    }
    return std::string(m_text.substr(begin, end - begin));
}

// The place of the bracket that closes the one at `from`; the end of reading where there is none.
std::size_t TermReader::closing(std::size_t from) const {
    return std::min(m_partners[from], m_cursor.end());
}

void TermReader::problem(std::size_t at, std::string message) {
    if (m_out.problems.size() < kMostProblems) {
        m_out.problems.push_back({at, std::move(message)});
    }
}

Terms readTerms(std::string_view formula) {
    return TermReader(formula).read();
}

} // namespace headcap::core
