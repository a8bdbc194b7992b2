#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include "core/collation/leaf_ref.h"
#include "core/collation/term_reader.h"
#include "core/values/small_letters.h"

namespace headcap::core {

// "v.1, 4, 5:", "pt. 2:", "part 1:".
bool TermReader::partLabel() {
    const std::size_t start = m_cursor.position();
    bool named = false;
    for (const std::string_view word :
         {"volumes", "volume", "vols", "vol", "v", "parts", "part", "pts", "pt"}) {
        named = named || m_cursor.takeWord(word);
    }
    if (!named) {
        return false;
    }
    m_cursor.take(U'.');
    int numbers = 0;
    do {
        m_cursor.skipSpaces();
        const int number = m_cursor.takeNumber();
        numbers += number > 0 && number < 1000 ? 1 : 1000;
        if (m_cursor.take(U'-')) {
            const int last = m_cursor.takeNumber();
            numbers += last > number && last < 1000 ? last - number : 1000;
        }
    } while (m_cursor.take(U',') && numbers < 100);
    if (numbers >= 100 || !m_cursor.take(U':')) {
        m_cursor.setPosition(start);
        return false;
    }
    part();
    m_alike = numbers;
    setAside(textOf(start, m_cursor.position()));
    return true;
}

// "Superius, [A]² B-H⁴; Medius, …": the name of a part-book, where a part begins.
bool TermReader::bookLabel() {
    const std::size_t start = m_cursor.position();
    std::size_t before = start;
    while (before > 0 && isSpace(m_glyphs[before - 1].sign)) {
        --before;
    }
    if (before > 0 && m_glyphs[before - 1].sign != U';') {
        return false;
    }
    std::size_t length = isUpper(m_cursor.sign()) ? 1 : 0;
    while (length > 0 && isLetter(m_cursor.sign(length)) && !isUpper(m_cursor.sign(length))) {
        ++length;
    }
    if (length < 4 || m_cursor.sign(length) != U',' || !isSpace(m_cursor.sign(length + 1))) {
        return false;
    }
    m_cursor.advance(length + 1);
    setAside(textOf(start, start + length));
    return true;
}

// Manuscripts: "3 × 8 (24)" is three quires of eight, the running total behind them.
bool TermReader::multiplication() {
    const std::size_t start = m_cursor.position();
    const int quires = m_cursor.takeNumber();
    m_cursor.skipSpaces();
    const bool times = quires > 0 && quires < 1000 && (m_cursor.take(U'×') || m_cursor.take(U'x'));
    m_cursor.skipSpaces();
    const int leaves = times ? m_cursor.takeNumber() : -1;
    if (leaves < 1 || leaves > 400) {
        m_cursor.setPosition(start);
        return false;
    }
    const int from = m_out.terms.empty() ? 1
                     : m_out.terms.back().first.kind == SignatureKind::number
                         ? std::stoi((m_out.terms.back().last ? *m_out.terms.back().last
                                                              : m_out.terms.back().first)
                                         .base) +
                               1
                         : 1;
    m_cursor.skipSpaces();
    std::string total;
    if (m_cursor.on(U'(')) {
        const std::size_t close = closing(m_cursor.position());
        total = textOf(m_cursor.position() + 1, close);
        m_cursor.setPosition(std::min(close + 1, m_cursor.end()));
    }
    if (!total.empty() && total.find_first_not_of("ivxl") == total.npos) {
        setAside(textOf(start, m_cursor.position()) +
                 ", numbered in roman apart from the rest: taken as endleaves, not counted");
        return true;
    }
    Term term;
    term.at = m_glyphs[start].at;
    term.first = {SignatureKind::number, {}, 1, std::to_string(from)};
    if (quires > 1) {
        term.last = term.first;
        term.last->base = std::to_string(from + quires - 1);
    }
    term.counts = {leaves};
    term.form = CountForm::raised;
    m_out.raisedCounts = true;
    push(std::move(term));
    return true;
}

void TermReader::noteBlanks(std::string_view text) {
    const std::string words = inSmallLetters(text);
    if (!says(words, "blank")) {
        return;
    }
    const bool both = says(words, "first and last");
    const bool last = says(words, "last leaf") || says(words, "final leaf") ||
                      says(words, "the last") || says(words, "last blank");
    const int several = says(words, "last two leaves") || says(words, "last 2 leaves")     ? 2
                        : says(words, "last three leaves") || says(words, "last 3 leaves") ? 3
                                                                                           : 0;
    m_out.lastBlank = std::max({m_out.lastBlank, last || both ? 1 : 0, several});
    m_out.firstBlank =
        m_out.firstBlank || says(words, "first leaf") || says(words, "first blank") || both;
}

void TermReader::setAside(std::string text) {
    if (text.empty() || m_out.assumptions.size() > 200) {
        return;
    }
    m_out.assumptions.push_back({std::move(text), Ground::prose});
}

// "in Greek characters", "in Hebrew characters": Latin letters stand for another alphabet's.
bool TermReader::scriptNote(std::string_view text) {
    const std::string words = inSmallLetters(text);
    if (says(words, "numerals") || !says(words, "in ")) {
        return false;
    }
    if (says(words, "greek")) {
        m_alphabet = Alphabet::romanisedGreek;
        return true;
    }
    if (says(words, "hebrew")) {
        m_alphabet = Alphabet::romanisedHebrew;
        return true;
    }
    return false;
}

} // namespace headcap::core
