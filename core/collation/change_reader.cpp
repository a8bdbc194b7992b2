#include <array>
#include <string>
#include <utility>

#include "core/collation/term_reader.h"

namespace headcap::core {
namespace {

constexpr int kDeepest = 8;

} // namespace

// The parentheses (or square brackets) at the cursor, as changes to the term they follow.
void TermReader::parenthesis(Term& host) {
    const std::size_t start = m_cursor.position();
    const std::size_t end = m_cursor.end();
    const std::size_t close = closing(start);
    if (close >= end) {
        problem(m_cursor.byteOffset(), "a parenthesis is opened here and never closed");
    }
    m_cursor.advance();
    m_cursor.setEnd(close);
    if (++m_depth > kDeepest) {
        problem(m_cursor.byteOffset(), "parentheses stand in parentheses too deeply");
    } else if (!scriptNote(textOf(start + 1, close))) {
        changes(host);
    } else {
        host.alphabet = m_alphabet;
        m_alphabet = Alphabet::latin;
        setAside(textOf(start + 1, close));
    }
    --m_depth;
    m_cursor.setEnd(end);
    m_cursor.setPosition(close < end ? close + 1 : end);
}

void TermReader::changes(Term& host) {
    std::optional<LeafTarget> removed;
    while (!m_cursor.atEnd()) {
        if (m_cursor.skipSpaces() || m_cursor.take(U',') || m_cursor.take(U';') ||
            m_cursor.take(U'.') || m_cursor.take(U'?')) {
            continue;
        }
        clause(host, removed);
    }
}

TermReader::Sign TermReader::takeSign() {
    if (m_cursor.take(U'±')) {
        return Sign::replaced;
    }
    for (const std::string_view both : {"+/-", "+-", "-/+", "-+"}) {
        if (m_cursor.startsWith(both)) {
            m_cursor.advance(both.size());
            return Sign::replaced;
        }
    }
    if (m_cursor.isSuperscript() && m_cursor.sign() == U'-') {
        m_cursor.advance();
        return Sign::cancelled;
    }
    return m_cursor.take(U'-')   ? Sign::cancelled
           : m_cursor.take(U'+') ? Sign::added
           : m_cursor.take(U'=') ? Sign::identical
                                 : Sign::none;
}

void TermReader::clause(Term& host, std::optional<LeafTarget>& removed) {
    const std::size_t start = m_cursor.position();
    const std::size_t at = m_cursor.byteOffset();
    const Sign sign = takeSign();
    if (sign == Sign::added) {
        added(host, removed);
        return;
    }
    if (sign == Sign::identical) {
        setAside("=" + clauseText());
        return;
    }
    const bool taken = sign != Sign::none;
    if (taken) {
        m_cursor.skipSpaces();
        skipLeafCount();
    }
    std::vector<LeafTarget> targets = leafList(taken);
    if (taken && targets.empty()) {
        m_cursor.setPosition(start);
        const std::string found = clauseText();
        problem(at, "a leaf is expected after the sign, found '" + found + "'");
        return;
    }
    if (taken) {
        removed = targets.back();
        host.changes.push_back(takenOut(sign, std::move(targets), at));
        return;
    }
    if (statedOfLeaves(host, std::move(targets), at)) {
        return;
    }
    m_cursor.setPosition(start);
    wordsAlone(at);
}

// Leaves taken out, cancelled or replaced, with what is said of them: perhaps blank, or lacking in
// this copy.
LeafChange TermReader::takenOut(Sign sign, std::vector<LeafTarget> targets, std::size_t at) {
    LeafChange change;
    change.at = at;
    change.kind =
        sign == Sign::cancelled ? LeafChange::Kind::cancelled : LeafChange::Kind::replaced;
    change.leaves = std::move(targets);
    const std::size_t here = m_cursor.position();
    m_cursor.skipSpaces();
    m_cursor.take(U',');
    m_cursor.take(U';');
    m_cursor.skipSpaces();
    if (m_cursor.startsWith("blank") || m_cursor.startsWith("probably blank") ||
        m_cursor.startsWith("presumably blank") || m_cursor.startsWith("presumed blank") ||
        m_cursor.startsWith("prob. blank")) {
        change.perhapsBlank = true;
        clauseText();
    } else if (m_cursor.startsWith("lacking") || m_cursor.startsWith("wanting") ||
               m_cursor.startsWith("missing")) {
        change.kind = LeafChange::Kind::lacking; // said of this copy
        clauseText();
    } else {
        m_cursor.setPosition(here);
    }
    return change;
}

// A clause that names no leaves: noted, but for one with a raised number that nobody read.
void TermReader::wordsAlone(std::size_t at) {
    const std::size_t start = m_cursor.position();
    bool raised = false;
    const bool ofSigning = says(textOf(start, m_cursor.end()), "signed");
    for (std::size_t i = start; i < clauseEnd() && !ofSigning; ++i) {
        raised =
            raised || (m_glyphs[i].level == GlyphLevel::superscript && isDigit(m_glyphs[i].sign));
    }
    const std::string text = clauseText();
    noteBlanks(text);
    if (raised) {
        problem(at, "'" + text + "' could not be read");
    } else {
        setAside(text);
    }
}

// "A4+…", "A4 blank", "A1 wanting", "12 lacks 8": something said of leaves that are named first.
bool TermReader::statedOfLeaves(Term& host, std::vector<LeafTarget> targets, std::size_t at) {
    if (targets.empty()) {
        return false;
    }
    m_cursor.skipSpaces();
    if (m_cursor.take(U'+')) {
        added(host, targets.back());
        return true;
    }
    LeafChange change;
    change.at = at;
    if (m_cursor.startsWith("lack") || m_cursor.startsWith("want")) {
        // "12 lacks 8" names the gathering, then its leaves.
        while (isLetter(m_cursor.sign())) {
            m_cursor.advance();
        }
        m_cursor.skipSpaces();
        std::vector<LeafTarget> leaves = leafList(false);
        change.kind = LeafChange::Kind::lacking;
        if (!leaves.empty() && targets.size() == 1) {
            std::optional<Signature> gathering = targets.front().signature;
            if (!gathering) {
                gathering =
                    Signature{SignatureKind::number, {}, 1, std::to_string(targets.front().leaf)};
            }
            for (LeafTarget& leaf : leaves) {
                leaf.signature = leaf.signature ? leaf.signature : gathering;
            }
            targets = std::move(leaves);
        }
        change.leaves = std::move(targets);
        clauseText();
        host.changes.push_back(std::move(change));
        return true;
    }
    const std::size_t here = m_cursor.position();
    m_cursor.take(U',');
    m_cursor.skipSpaces();
    if (!isLetter(m_cursor.sign()) && !m_cursor.on(U'(')) {
        m_cursor.setPosition(here);
    }
    const std::string text = clauseText();
    if (says(text, "lacking") || says(text, "wanting") || says(text, "missing")) {
        change.kind = LeafChange::Kind::lacking;
    } else if (says(text, "blank")) {
        change.kind = LeafChange::Kind::blank;
    } else if (says(text, "cancelled") || says(text, "excised")) {
        change.kind = LeafChange::Kind::cancelled;
    } else {
        return false;
    }
    for (const LeafTarget& target : targets) {
        if (target.leaf == 0 && change.kind != LeafChange::Kind::lacking) {
            return false;
        }
    }
    change.leaves = std::move(targets);
    host.changes.push_back(std::move(change));
    return true;
}

} // namespace headcap::core
