#include <string>
#include <utility>

#include "core/collation/term_reader.h"

namespace headcap::core {
namespace {

constexpr int kMostLeaves = 400;

} // namespace

// Leaves behind each other: "A1.4", "Q3-4", "B³ and B⁴", "Z7,8", "K⁸ S⁸ 3F⁸".
std::vector<LeafTarget> TermReader::leafList(bool raisedIsLeaf) {
    std::vector<LeafTarget> out;
    std::size_t good = m_cursor.position();
    while (out.size() < kMostLeaves && leafTargets(out, raisedIsLeaf)) {
        good = m_cursor.position();
        m_cursor.take(U'?');
        good = m_cursor.position();
        m_cursor.skipSpaces();
        bool joined = m_cursor.take(U',') || m_cursor.take(U'.') || m_cursor.take(U'&');
        m_cursor.skipSpaces();
        joined = m_cursor.takeWord("and") || joined;
        m_cursor.skipSpaces();
        GlyphCursor ahead = m_cursor;
        const std::optional<Signature> mark = readSignature(ahead, false);
        const bool several = !raisedIsLeaf && mark && ahead.isSuperscript();
        if (!joined && !several) {
            break;
        }
        // A mark and a word, "B2 blank", begin a clause of their own.
        std::vector<LeafTarget> next;
        const std::size_t here = m_cursor.position();
        if (mark && raisedIsLeaf && leafTargets(next, raisedIsLeaf)) {
            m_cursor.skipSpaces();
            const bool ownClause = m_cursor.startsWith("blank") || m_cursor.startsWith("signed") ||
                                   m_cursor.on(U'+') || m_cursor.startsWith("lack") ||
                                   m_cursor.startsWith("want");
            if (ownClause) {
                break;
            }
        }
        m_cursor.setPosition(here);
    }
    m_cursor.setPosition(good);
    return out;
}

bool TermReader::leafTargets(std::vector<LeafTarget>& out, bool raisedIsLeaf) {
    const std::size_t start = m_cursor.position();
    const auto quote = [&] { return m_cursor.take(U'"') || m_cursor.take(U'\''); };
    const bool quoted = quote();
    LeafTarget target;
    GlyphCursor ahead = m_cursor;
    ahead.takeNumber();
    const bool numbered = ahead.isSubscript() || (quoted && (ahead.on(U'"') || ahead.on(U'\'')));
    target.signature = readSignature(m_cursor, numbered);
    if (!target.signature && !out.empty()) {
        target.signature = out.back().signature;
    }
    const bool named = m_cursor.position() != start;
    if (quoted && target.signature) {
        quote();
    }
    if (target.signature && target.signature->kind == SignatureKind::symbol &&
        isSpace(m_cursor.sign()) && isDigit(m_cursor.sign(1))) {
        m_cursor.advance(); // "[par.] 1"
    }
    int first = m_cursor.takeNumber();
    first = first < 0 ? m_cursor.takeNumber(GlyphLevel::subscript) : first;
    const int raised = first < 0 ? m_cursor.takeNumber(GlyphLevel::superscript) : -1;
    if (first < 0 && raisedIsLeaf) {
        first = raised;
    }
    quote();
    const bool whole =
        named && first < 0 && target.signature && (raised > 0 || !isLetter(m_cursor.sign()));
    if (first == 0 || first > kMostLeaves || (first < 0 && !whole) ||
        (first > 0 && isLetter(m_cursor.sign()))) {
        m_cursor.setPosition(start);
        return false;
    }
    target.leaf = first > 0 ? first : 0;
    out.push_back(target);
    const auto digit = [&](GlyphLevel level) {
        return isDigit(m_cursor.sign(1)) && m_cursor.level(1) == level;
    };
    const bool dash = m_cursor.sign() == U'-';
    if (dash && first > 0 && (digit(GlyphLevel::line) || digit(GlyphLevel::subscript))) {
        m_cursor.advance();
        const int line = m_cursor.takeNumber();
        const int last = line >= 0 ? line : m_cursor.takeNumber(GlyphLevel::subscript);
        for (int leaf = first + 1; leaf <= last && leaf <= kMostLeaves; ++leaf) {
            target.leaf = leaf;
            out.push_back(target);
        }
    }
    return true;
}

// Where the clause at the cursor ends: the next comma or semicolon outside brackets and quotes.
std::size_t TermReader::clauseEnd() const {
    int depth = 0;
    bool quotes = false;
    for (std::size_t i = m_cursor.position(); i < m_cursor.end(); ++i) {
        const char32_t sign = m_glyphs[i].sign;
        quotes = sign == U'"' ? !quotes : quotes;
        depth += sign == U'(' || sign == U'[' ? 1 : sign == U')' || sign == U']' ? -1 : 0;
        if (depth <= 0 && !quotes && (sign == U',' || sign == U';')) {
            return i;
        }
    }
    return m_cursor.end();
}

std::string TermReader::clauseText() {
    const std::size_t from = m_cursor.position();
    const std::size_t to = clauseEnd();
    m_cursor.setPosition(to);
    return textOf(from, to);
}

// "-1 leaf, A2?": the number counts, the leaf is named behind it.
void TermReader::skipLeafCount() {
    GlyphCursor ahead = m_cursor;
    ahead.skipSpaces();
    if (ahead.takeNumber() > 0 && ahead.skipSpaces() &&
        (ahead.takeWord("leaf") || ahead.takeWord("leaves"))) {
        ahead.take(U',');
        ahead.take(U':');
        ahead.skipSpaces();
        m_cursor = ahead;
    }
}

} // namespace headcap::core
