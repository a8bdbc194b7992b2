#include "core/collation/leaf_ref.h"

#include <array>
#include <utility>

#include "core/collation/leaf_ref_reader.h"

namespace headcap::core {

LeafRefReader::Leading LeafRefReader::leading() {
    struct Word {
        std::string_view text;
        Leading kind;
        bool mayTouch; // "p." reads without its point only where a space follows: p4 is a leaf of p
    };
    static constexpr std::array kWords{
        Word{"folios", Leading::folio, true},
        Word{"folio", Leading::folio, true},
        Word{"fols", Leading::folio, true},
        Word{"fol", Leading::folio, true},
        Word{"ff", Leading::folio, false},
        Word{"fo", Leading::folio, false},
        Word{"f", Leading::folio, false},
        Word{"pages", Leading::page, true},
        Word{"page", Leading::page, true},
        Word{"pp", Leading::page, false},
        Word{"p", Leading::page, false},
        Word{"plates", Leading::plate, true},
        Word{"plate", Leading::plate, true},
        Word{"pls", Leading::plate, true},
        Word{"pl", Leading::plate, true},
        Word{"gatherings", Leading::gathering, true},
        Word{"gathering", Leading::gathering, true},
        Word{"quires", Leading::gathering, true},
        Word{"quire", Leading::gathering, true},
    };
    for (const Word& word : kWords) {
        const std::size_t length = word.text.size();
        const bool pointed = m_cursor.on(U'.', length);
        const char32_t next = m_cursor.sign(length);
        if (!m_cursor.startsWith(word.text) || (!pointed && isLetter(next)) ||
            (!pointed && !word.mayTouch && !isSpace(next)) || next == 0) {
            continue;
        }
        m_cursor.advance(length + (pointed ? 1 : 0));
        m_cursor.skipSpaces();
        return word.kind;
    }
    return Leading::none;
}

Side LeafRefReader::side() {
    if (m_cursor.takeWord("recto")) {
        return Side::recto;
    }
    if (m_cursor.takeWord("verso")) {
        return Side::verso;
    }
    const char32_t sign = m_cursor.sign();
    if (isLetter(m_cursor.sign(1))) {
        return Side::both;
    }
    if (sign == U'r' || sign == U'a') {
        m_cursor.advance();
        m_cursor.take(U'.');
        return Side::recto;
    }
    if (sign == U'v' || sign == U'b') {
        m_cursor.advance();
        m_cursor.take(U'.');
        return Side::verso;
    }
    return Side::both;
}

std::optional<PrintedNumber> LeafRefReader::number() {
    PrintedNumber out;
    if (const int sequence = m_cursor.takeNumber(GlyphLevel::superscript); sequence >= 0) {
        if (sequence < 2 || sequence > 99) {
            return std::nullopt;
        }
        out.sequence = sequence;
    }
    if (const int value = m_cursor.takeNumber(); value >= 0) {
        out.value = value;
        return value >= 1 && value <= kMostPagesNamed ? std::optional(out) : std::nullopt;
    }
    // The letters of a roman numeral, but for a last r or v that says the side (xii r, xiiv is xii
    // v).
    std::string letters;
    while (isLatin(m_cursor.sign(letters.size()))) {
        letters.push_back(static_cast<char>(m_cursor.sign(letters.size())));
    }
    std::size_t length = letters.size();
    std::optional<int> value = romanValue(letters);
    const bool sided = length > 1 && letters.back() == 'v' && value &&
                       toRoman(*value, false) != letters &&
                       romanValue(std::string_view(letters).substr(0, length - 1));
    if (sided || (!value && length > 1 && letters.back() == 'r')) {
        value = romanValue(std::string_view(letters).substr(0, --length));
    }
    if (!value) {
        return std::nullopt;
    }
    out.value = *value;
    out.style = letters.front() >= 'A' && letters.front() <= 'Z' ? NumeralStyle::romanUpper
                                                                 : NumeralStyle::romanLower;
    m_cursor.advance(length);
    return out;
}

std::optional<PlateRef> LeafRefReader::plate() {
    PlateRef out;
    if (const int value = m_cursor.takeNumber(); value >= 0) {
        if (value < 1 || value > kMostPagesNamed) {
            return std::nullopt;
        }
        out.label = std::to_string(value);
        if (isLetter(m_cursor.sign()) && !isLetter(m_cursor.sign(1)) && m_cursor.sign() != U'r' &&
            m_cursor.sign() != U'v') {
            appendUtf8(out.label, m_cursor.sign()); // 7a, 7b
            m_cursor.advance();
            return out;
        }
        m_cursor.skipSpaces();
        out.side = m_cursor.sign() == U'a' || m_cursor.sign() == U'b' ? Side::both : side();
        return out;
    }
    while (isLatin(m_cursor.sign()) && out.label.size() < 20) {
        appendUtf8(out.label, m_cursor.sign());
        m_cursor.advance();
    }
    return out.label.empty() ? std::nullopt : std::optional(out);
}

std::optional<SignedLeaf> LeafRefReader::signedLeaf() {
    const std::size_t start = m_cursor.position();
    SignedLeaf out;
    std::optional<Signature> signature = readSignature(m_cursor, true);
    if (!signature) {
        return std::nullopt;
    }
    out.signature = *signature;
    out.leaf = m_cursor.takeNumber(GlyphLevel::subscript);
    if (out.leaf < 0 && signature->kind == SignatureKind::number) {
        out.leaf = m_cursor.take(U'.') || m_cursor.take(U'/') ? m_cursor.takeNumber() : -1;
    } else if (out.leaf < 0) {
        out.leaf = m_cursor.takeNumber();
    }
    if (out.leaf < 1 || out.leaf > kMostLeavesNamed) {
        m_cursor.setPosition(start);
        return std::nullopt;
    }
    if (m_cursor.on(U'+') && isDigit(m_cursor.sign(1))) {
        m_cursor.advance();
        out.added = m_cursor.takeNumber();
        if (out.added < 1 || out.added > kMostLeavesNamed) {
            m_cursor.setPosition(start);
            return std::nullopt;
        }
    }
    const std::size_t spaced = m_cursor.position();
    m_cursor.skipSpaces();
    const bool word = m_cursor.startsWith("recto") || m_cursor.startsWith("verso");
    if (!word) {
        m_cursor.setPosition(spaced);
    }
    out.side = side();
    return out;
}

std::optional<LeafRef> LeafRefReader::ref(Leading kind) {
    switch (kind) {
    case Leading::folio:
        if (const std::optional<PrintedNumber> value = number()) {
            m_cursor.skipSpaces();
            return FolioRef{{*value}, side()};
        }
        return std::nullopt;
    case Leading::page:
        if (const std::optional<PrintedNumber> value = number()) {
            return PageRef{{*value}};
        }
        return std::nullopt;
    case Leading::plate:
        if (std::optional<PlateRef> value = plate()) {
            return *value;
        }
        return std::nullopt;
    case Leading::none:
        if (m_cursor.takeWord("frontispiece")) {
            return PlateRef{"frontispiece"};
        }
        if (const std::optional<SignedLeaf> leaf = signedLeaf()) {
            return *leaf;
        }
        break;
    case Leading::gathering:
        break;
    }
    return std::nullopt;
}

tl::expected<LeafRef, TextError> LeafRefReader::single() {
    m_cursor.skipSpaces();
    if (m_cursor.atEnd()) {
        return tl::unexpected(error(TextProblem::empty));
    }
    const std::optional<LeafRef> out = ref(leading());
    if (!out) {
        return tl::unexpected(error(TextProblem::malformed));
    }
    m_cursor.skipSpaces();
    if (!m_cursor.atEnd()) {
        return tl::unexpected(error(TextProblem::trailing));
    }
    return *out;
}

tl::expected<LeafRef, TextError> parseLeafRef(std::string_view text) {
    return LeafRefReader(text).single();
}

tl::expected<LeafSet, TextError> parseLeafSet(std::string_view text) {
    return LeafRefReader(text).set();
}

} // namespace headcap::core
