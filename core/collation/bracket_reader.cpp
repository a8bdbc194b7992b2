#include <algorithm>
#include <utility>

#include "core/collation/term_reader.h"

namespace headcap::core {
namespace {

constexpr int kDeepest = 8;

} // namespace

// For each bracket the place of the one that closes it, or the end.
void TermReader::pairBrackets() {
    m_partners.assign(m_glyphs.size(), m_glyphs.size());
    std::vector<std::size_t> round;
    std::vector<std::size_t> square;
    for (std::size_t i = 0; i < m_glyphs.size(); ++i) {
        const char32_t sign = m_glyphs[i].sign;
        auto& open = sign == U'(' || sign == U')' ? round : square;
        if (sign == U'(' || sign == U'[') {
            open.push_back(i);
        } else if ((sign == U')' || sign == U']') && !open.empty()) {
            m_partners[open.back()] = i;
            open.pop_back();
        }
    }
}

// The place of the bracket that closes the one at `from`; the end of reading where there is none.
std::size_t TermReader::closing(std::size_t from) const {
    return std::min(m_partners[from], m_cursor.end());
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

} // namespace headcap::core
