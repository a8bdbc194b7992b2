#include <algorithm>
#include <utility>

#include "core/collation/term_reader.h"

namespace headcap::core {
namespace {

constexpr int kMostLeaves = 400; // in one gathering
constexpr std::size_t kLongestCycle = 12;

bool joinsCounts(char32_t sign) {
    return sign == U'/' || sign == U'·' || sign == U'.' || sign == U',';
}

void addRange(std::vector<int>& out, int from, int to) {
    for (int leaf = from; leaf <= to && leaf - from < kMostLeaves; ++leaf) {
        out.push_back(leaf);
    }
}

} // namespace

bool TermReader::count(Term& term) {
    const std::size_t start = m_cursor.position();
    const bool dotFirst = m_cursor.on(U'·') && m_cursor.isSuperscript(1);
    const bool raised =
        m_cursor.isSuperscript() && (isDigit(m_cursor.sign()) || m_cursor.sign() == U'(');
    bool read = false;
    if (raised || dotFirst) {
        read = raisedCount(term);
        m_out.raisedCounts = m_out.raisedCounts || read;
    } else if (m_cursor.on(U'(')) {
        read = bracedCount(term);
    } else if (m_cursor.isSubscript() && isDigit(m_cursor.sign())) {
        read = leafNumbers(term, GlyphLevel::subscript);
    } else if (m_cursor.on(U'.') && term.first.kind == SignatureKind::number &&
               isDigit(m_cursor.sign(1)) && m_cursor.level(1) == GlyphLevel::line) {
        m_cursor.advance(); // quire.leaves of manuscript descriptions
        term.counts = {m_cursor.takeNumber()};
        term.form = CountForm::raised;
        read = true;
    } else if (isDigit(m_cursor.sign()) && m_cursor.level() == GlyphLevel::line &&
               term.first.kind != SignatureKind::number) {
        read = leafNumbers(term, GlyphLevel::line);
    }
    if (!read) {
        m_cursor.setPosition(start);
        return false;
    }
    checkCounts(term);
    return true;
}

// ⁸  ⁸/⁴  ⁶·⁶·⁴  and, where one was lost, ·⁴ and ⁴·; ²⁻⁴ are leaves 2 to 4.
bool TermReader::raisedCount(Term& term) {
    term.form = CountForm::raised;
    if (m_cursor.on(U'·')) {
        m_cursor.advance();
        term.counts.push_back(0);
    }
    while (term.counts.size() < kLongestCycle) {
        const bool braced = m_cursor.isSuperscript() && m_cursor.sign() == U'(';
        m_cursor.advance(braced ? 1 : 0);
        const int number = m_cursor.takeNumber(GlyphLevel::superscript);
        if (number < 0) {
            return false;
        }
        m_cursor.advance(braced && m_cursor.sign() == U')' ? 1 : 0);
        if (m_cursor.isSuperscript() && m_cursor.sign() == U'-' && m_cursor.isSuperscript(1)) {
            m_cursor.advance();
            addRange(term.only, number, m_cursor.takeNumber(GlyphLevel::superscript));
            term.singletons = true;
            return !term.only.empty();
        }
        term.counts.push_back(number);
        if (joinsCounts(m_cursor.sign()) && m_cursor.isSuperscript(1) &&
            isDigit(m_cursor.sign(1)) && !opensSeries()) {
            m_cursor.advance();
        } else if (m_cursor.on(U'·')) {
            m_cursor.advance();
            term.counts.push_back(0);
            return true;
        } else {
            return true;
        }
    }
    return true;
}

// "A-C⁴,²B": what stands behind the comma is the prefix of the next mark.
bool TermReader::opensSeries() const {
    GlyphCursor ahead = m_cursor;
    ahead.advance();
    return ahead.takeNumber(GlyphLevel::superscript) > 0 &&
           (isLetter(ahead.sign()) || ahead.on(U'[') || isDigit(ahead.sign()));
}

// A(8), and nothing but the number in the parentheses.
bool TermReader::bracedCount(Term& term) {
    m_cursor.advance();
    const int number = m_cursor.takeNumber();
    if (number < 0 || !m_cursor.take(U')')) {
        return false;
    }
    term.counts = {number};
    term.form = CountForm::raised;
    m_out.raisedCounts = true;
    return true;
}

// Numbers on or below the line: one is a count or a leaf, more of them or a range are leaves, a
// slash makes them counts again. Behind a range they are its counts.
bool TermReader::leafNumbers(Term& term, GlyphLevel level) {
    std::vector<int> numbers{m_cursor.takeNumber(level)};
    bool ranged = false;
    bool commas = false;
    bool slashes = false;
    const auto digitAt = [&](std::size_t ahead) {
        return isDigit(m_cursor.sign(ahead)) && m_cursor.level(ahead) == level;
    };
    while (numbers.size() < kLongestCycle && digitAt(1) &&
           (joinsCounts(m_cursor.sign()) || m_cursor.sign() == U'-')) {
        const char32_t join = m_cursor.sign();
        GlyphCursor ahead = m_cursor;
        ahead.advance();
        const int next = ahead.takeNumber(level);
        const bool markFollows =
            isLetter(ahead.sign()) || ahead.isSuperscript() || ahead.on(U'[') || ahead.on(U'*');
        if (markFollows) {
            break;
        }
        m_cursor = ahead;
        ranged = ranged || join == U'-';
        commas = commas || join == U',';
        slashes = slashes || join == U'/';
        if (join == U'-') {
            addRange(numbers, numbers.back() + 1, next);
        } else {
            numbers.push_back(next);
        }
    }
    const bool list = numbers.size() > 1 && !slashes && !term.last;
    m_loweredCounts = m_loweredCounts || (level == GlyphLevel::subscript && term.last);
    term.form = level == GlyphLevel::line ? CountForm::plain : CountForm::lowered;
    if (list || (level == GlyphLevel::subscript && !term.last && !m_loweredCounts)) {
        term.only = std::move(numbers);
        term.singletons = ranged || commas;
    } else {
        term.counts = std::move(numbers);
    }
    return true;
}

// "P.ii⁴": a further mark in small numerals behind the letter.
bool TermReader::dottedNumerals(Term& term) {
    std::size_t length = 1;
    if (!m_cursor.on(U'.')) {
        return false;
    }
    while (m_cursor.on(U'i', length) || m_cursor.on(U'v', length) || m_cursor.on(U'x', length)) {
        ++length;
    }
    if (length == 1 || length > 12 || !m_cursor.isSuperscript(length)) {
        return false;
    }
    for (std::size_t i = 0; i < length; ++i) {
        appendUtf8(term.first.suffix, m_cursor.sign(i));
    }
    m_cursor.advance(length);
    return true;
}

void TermReader::checkCounts(Term& term) {
    const auto beyond = [](int n) { return n < 0 || n > kMostLeaves; };
    const bool none = term.only.empty() &&
                      std::find(term.counts.begin(), term.counts.end(), 0) != term.counts.end() &&
                      term.counts.size() == 1;
    const bool zeroLeaf = std::find(term.only.begin(), term.only.end(), 0) != term.only.end();
    if (none || zeroLeaf || std::any_of(term.counts.begin(), term.counts.end(), beyond) ||
        std::any_of(term.only.begin(), term.only.end(), beyond)) {
        problem(term.at, "'" + toText(term.first) + "' has a leaf count that no gathering has");
        term.counts.clear();
        term.only.clear();
        term.form = CountForm::none;
    }
}

} // namespace headcap::core
