#include <string>
#include <utility>

#include "core/collation/term_reader.h"

namespace headcap::core {
namespace {

constexpr int kMostLeaves = 400;

} // namespace

// What a plus sign brings in: leaves by number, marked leaves or gatherings, or leaves in words.
void TermReader::added(Term& host, std::optional<LeafTarget> after) {
    LeafChange change;
    change.at = m_cursor.byteOffset();
    change.kind = LeafChange::Kind::added;
    if (after) {
        change.leaves = {*after};
    }
    m_cursor.skipSpaces();
    const std::size_t start = m_cursor.position();
    const int number = m_cursor.takeNumber();
    const bool marked = isLetter(m_cursor.sign()) || m_cursor.on(U'*') || m_cursor.on(U'[') ||
                        m_cursor.isSuperscript() || m_cursor.on(U'¶') || m_cursor.on(U'-');
    if (number > 0 && number < kMostLeaves && !marked) {
        addedByNumber(change, number);
        host.changes.push_back(std::move(change));
        return;
    }
    m_cursor.setPosition(start);
    change.addedTerms = addedTerms();
    if (change.addedTerms.empty()) {
        const std::string words = clauseText();
        const bool leaf = says(words, "leaf") && !says(words, "plate");
        if (!leaf) {
            setAside("+ " + words);
            return;
        }
        change.addedCount = 1;
    }
    host.changes.push_back(std::move(change));
}

// "+1", "+1.2", "+2 leaves": the number is read; of what is named, each is a leaf.
void TermReader::addedByNumber(LeafChange& change, int number) {
    change.addedCount = 1;
    while ((m_cursor.on(U'.') || m_cursor.on(U',')) && isDigit(m_cursor.sign(1))) {
        change.addedConjugate = m_cursor.on(U'.');
        m_cursor.advance();
        m_cursor.takeNumber();
        ++change.addedCount;
    }
    const std::size_t here = m_cursor.position();
    const std::string words = clauseText();
    if (says(words, "leaf") || says(words, "leaves") || says(words, "singleton")) {
        change.addedCount = number;
        change.addedConjugate = says(words, "conjugate") && !says(words, "disjunct");
        return;
    }
    m_cursor.setPosition(here);
    if (change.addedCount == 1 && number > 1) {
        change.addedCount = number;
        m_out.assumptions.push_back(
            {"'+" + std::to_string(number) + "' is taken as that many leaves added",
             Ground::formula});
    }
}

std::vector<Term> TermReader::addedTerms() {
    std::vector<Term> terms;
    while (!m_cursor.atEnd() && !m_cursor.on(U',') && !m_cursor.on(U';')) {
        if (m_cursor.skipSpaces()) {
            continue;
        }
        if (m_cursor.on(U'(') && !terms.empty()) {
            GlyphCursor ahead = m_cursor;
            const std::optional<Signature> mark = readSignature(ahead, false);
            if (!mark || !ahead.isSuperscript()) {
                parenthesis(terms.back());
                continue;
            }
        }
        std::optional<Term> term;
        if (!wordsAhead()) {
            term = m_cursor.on(U'"') || m_cursor.on(U'\'') ? quoted() : run();
        }
        if (!term) {
            break;
        }
        terms.push_back(std::move(*term));
    }
    return terms;
}

} // namespace headcap::core
