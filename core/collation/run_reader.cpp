#include <algorithm>
#include <array>
#include <utility>

#include "core/collation/format_name.h"
#include "core/collation/printed_number.h"
#include "core/collation/term_reader.h"

namespace headcap::core {

// "Signatures:", "Collation:", "(in Hebrew numerals):", "8vo:".
void TermReader::label() {
    for (bool again = true; again;) {
        again = false;
        m_cursor.skipSpaces();
        for (const std::string_view word : {"signatures", "signature", "collation formula",
                                            "collation", "collates", "segn.", "sign.", "sig."}) {
            if (m_cursor.startsWith(word) && !isLetter(m_cursor.sign(word.size()))) {
                m_cursor.advance(word.size());
                again = true;
            }
        }
        const std::size_t start = m_cursor.position();
        if (std::optional<std::string> format = takeFormat(m_cursor)) {
            if (m_cursor.take(U':') || m_cursor.take(U'.')) {
                m_out.format = std::move(*format);
                again = true;
            } else {
                m_cursor.setPosition(start);
            }
        }
        if (m_cursor.on(U'(')) {
            const std::size_t close = closing(start);
            GlyphCursor ahead = m_cursor;
            ahead.setPosition(close + 1);
            ahead.skipSpaces();
            const std::string inside = textOf(start + 1, close);
            if (close < m_cursor.end() && ahead.on(U':') && inside.size() > 3) {
                m_cursor.setPosition(close + 1);
                scriptNote(inside);
                setAside(inside);
                again = true;
            }
        }
        m_cursor.skipSpaces();
        again = m_cursor.take(U':') || again;
    }
}

// A raised number with no mark after it belongs to the term before, where that has none.
bool TermReader::looseCount() {
    if (!m_cursor.isSuperscript() || !isDigit(m_cursor.sign())) {
        return false;
    }
    GlyphCursor ahead = m_cursor;
    if (readSignature(ahead, false)) {
        return false;
    }
    const int series = ahead.takeNumber(GlyphLevel::superscript);
    ahead.skipSpaces();
    if (ahead.on(U'"') && series > 1 && series < kMostAlphabets) {
        m_cursor = ahead;
        if (std::optional<Term> term = quoted()) {
            term->first.prefix = superscript(series) + term->first.prefix;
            push(std::move(*term));
        }
        return true;
    }
    if (m_out.terms.empty() || !m_out.terms.back().counts.empty()) {
        const std::size_t at = m_cursor.byteOffset();
        m_cursor.takeNumber(GlyphLevel::superscript);
        problem(at, "a raised number stands here without a signature");
        return true;
    }
    return count(m_out.terms.back());
}

// A lone number is a signature where a count or a range with one follows: 1⁴, 1-30⁸, 1-5.8.
bool TermReader::numberIsSignature() const {
    GlyphCursor ahead = m_cursor;
    for (int ends = 0; ends < 2; ++ends) {
        ahead.takeNumber(GlyphLevel::superscript);
        if (ahead.takeNumber() < 0) {
            return false;
        }
        if (ahead.isSuperscript() || ahead.isSubscript()) {
            return true;
        }
        if (ahead.on(U'.') && isDigit(ahead.sign(1)) && ahead.level(1) == GlyphLevel::line) {
            return true;
        }
        if (!ahead.take(U'-')) {
            return false;
        }
    }
    return false;
}

std::optional<Signature> TermReader::signatureHere() {
    return readSignature(m_cursor, numberIsSignature());
}

std::optional<Term> TermReader::run() {
    Term term;
    const std::size_t start = m_cursor.position();
    term.at = m_cursor.byteOffset();
    term.alphabet = m_alphabet;
    std::optional<Signature> first = signatureHere();
    if (!first) {
        m_cursor.setPosition(start);
        return std::nullopt;
    }
    term.first = std::move(*first);
    dottedNumerals(term);
    count(term);
    if (m_cursor.on(U'(') && term.only.empty()) {
        // "A(-A1)-K⁸", "A(-A₂)⁴": the change stands before the rest of its term.
        GlyphCursor ahead = m_cursor;
        ahead.setPosition(closing(m_cursor.position()) + 1);
        const bool goesOn = (ahead.on(U'-') && isLetter(ahead.sign(1))) ||
                            (ahead.isSuperscript() && term.counts.empty());
        if (goesOn) {
            parenthesis(term);
            count(term);
        }
    }
    rangeEnd(term);
    return term;
}

void TermReader::rangeEnd(Term& term) {
    const std::size_t start = m_cursor.position();
    m_cursor.skipSpaces();
    if (!m_cursor.take(U'-')) {
        m_cursor.setPosition(start);
        return;
    }
    m_cursor.skipSpaces();
    const std::size_t at = m_cursor.byteOffset();
    const bool number = term.first.kind == SignatureKind::number;
    std::optional<Signature> last = readSignature(m_cursor, number);
    if (!last) {
        problem(at, "after '" + toText(term.first) + "-' a signature is expected");
        return;
    }
    const std::vector<int> before = std::exchange(term.counts, {});
    const CountForm form = std::exchange(term.form, CountForm::none);
    term.last = std::move(*last);
    if (!count(term)) {
        term.counts = before;
        term.form = form;
    } else if (!before.empty() && before != term.counts) {
        problem(at, "the two ends of '" + toText(term.first) + "-" + toText(*term.last) +
                        "' have different leaf counts");
    }
}

// "1i": the leaf in small roman numerals, as it is signed.
void TermReader::romanLeaf(Term& term) {
    std::string numerals;
    while (isLatin(m_cursor.sign(numerals.size())) && numerals.size() < 8) {
        numerals.push_back(static_cast<char>(m_cursor.sign(numerals.size())));
    }
    const std::optional<int> leaf = romanValue(numerals);
    if (leaf && *leaf < 100 && numerals.front() >= 'a') {
        m_cursor.advance(numerals.size());
        term.only = {*leaf};
    }
}

// "gg3.4", "Gg⁶": as really signed, its leaves or its count inside the quotes or behind them.
std::optional<Term> TermReader::quoted() {
    const char32_t mark = m_cursor.sign();
    const std::size_t start = m_cursor.position();
    std::size_t close = start + 1;
    while (close < m_cursor.end() && m_glyphs[close].sign != mark) {
        ++close;
    }
    if (close >= m_cursor.end() || close == start + 1) {
        problem(m_cursor.byteOffset(), "a quotation mark is opened here and never closed");
        m_cursor.advance();
        return std::nullopt;
    }
    Term term;
    term.at = m_cursor.byteOffset();
    const std::size_t end = m_cursor.end();
    m_cursor.setEnd(close);
    m_cursor.advance();
    std::optional<Signature> inside = readSignature(m_cursor, true);
    if (inside) {
        term.first = std::move(*inside);
        count(term);
    }
    if (inside && term.counts.empty() && term.only.empty() && !m_cursor.atEnd()) {
        romanLeaf(term);
    }
    if (!inside || !m_cursor.atEnd()) {
        term = Term{term.at};
        term.first.kind = SignatureKind::symbol;
        term.first.base = textOf(start + 1, close);
    }
    term.first.quoted = true;
    m_cursor.setEnd(end);
    m_cursor.setPosition(close + 1);
    if (term.counts.empty() && term.only.empty()) {
        count(term);
    }
    return term;
}

} // namespace headcap::core
