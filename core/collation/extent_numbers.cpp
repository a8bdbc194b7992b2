#include <algorithm>

#include "core/collation/extent_reader.h"

namespace headcap::core {
namespace {

constexpr std::size_t kMostRuns = 2'000;

} // namespace

std::optional<WrittenNumber> ExtentReader::written() {
    if (const int value = m_cursor.takeNumber(); value >= 0) {
        return value <= kMostPagesStated ? std::optional(WrittenNumber{value}) : std::nullopt;
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
    return WrittenNumber{*value, upper ? NumeralStyle::romanUpper : NumeralStyle::romanLower};
}

void ExtentReader::push(ExtentRun run, std::size_t at) {
    if (run.count < 0 || run.count > kMostPagesStated || m_out.runs.size() >= kMostRuns) {
        problem(at, "more pages are stated than a book can have");
        return;
    }
    run.part = m_part;
    m_out.runs.push_back(run);
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
    std::optional<WrittenNumber> first = written();
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
        const std::optional<WrittenNumber> last = written();
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
    const std::optional<WrittenNumber> value = written();
    std::optional<WrittenNumber> end;
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

void ExtentReader::corrected(WrittenNumber value, std::optional<WrittenNumber> rangeEnd,
                             std::size_t at) {
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
    if (run.count > kMostPagesStated) {
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
    std::optional<WrittenNumber> first = written();
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
        const std::optional<WrittenNumber> last = written();
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

} // namespace headcap::core
