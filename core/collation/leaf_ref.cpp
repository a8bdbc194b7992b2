#include "core/collation/leaf_ref.h"

#include <array>
#include <utility>

namespace headcap::core {
namespace {

constexpr int kMostLeaves = 999;
constexpr int kMostPages = 99'999;

// The reader of one text: the cursor, and where it gave up.
class Reader {
public:
    explicit Reader(std::string_view text)
        : m_glyphs(toGlyphs(text)), m_cursor(m_glyphs, text.size()) {}

    tl::expected<LeafRef, TextError> single();
    tl::expected<LeafSet, TextError> set();

private:
    enum class Leading { none, folio, page, plate, gathering };

    Leading leading();
    std::optional<LeafRef> ref(Leading kind);
    std::optional<SignedLeaf> signedLeaf();
    std::optional<LeafSetItem> item();
    std::optional<LeafSetItem> countOf();
    std::optional<LeafSetItem> gatherings();
    std::optional<LeafSetItem> spanFrom(LeafRef first, Leading kind);
    std::optional<LeafRef> spanEnd(const LeafRef& first, Leading kind);
    std::optional<PrintedNumber> number();
    std::optional<PlateRef> plate();
    Side side();
    bool takeDash();
    bool takeSeparator();
    [[nodiscard]] bool endsHere() const;
    [[nodiscard]] TextError error(TextProblem problem) const {
        return {problem, m_cursor.byteOffset()};
    }

    std::vector<Glyph> m_glyphs;
    GlyphCursor m_cursor;
    Leading m_last = Leading::none;
    std::optional<LeafRef> m_before; // what "C1, 3" continues
};

Reader::Leading Reader::leading() {
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

Side Reader::side() {
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

std::optional<PrintedNumber> Reader::number() {
    PrintedNumber out;
    if (const int sequence = m_cursor.takeNumber(GlyphLevel::superscript); sequence >= 0) {
        if (sequence < 2 || sequence > 99) {
            return std::nullopt;
        }
        out.sequence = sequence;
    }
    if (const int value = m_cursor.takeNumber(); value >= 0) {
        out.value = value;
        return value >= 1 && value <= kMostPages ? std::optional(out) : std::nullopt;
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

std::optional<PlateRef> Reader::plate() {
    PlateRef out;
    if (const int value = m_cursor.takeNumber(); value >= 0) {
        if (value < 1 || value > kMostPages) {
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

std::optional<SignedLeaf> Reader::signedLeaf() {
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
    if (out.leaf < 1 || out.leaf > kMostLeaves) {
        m_cursor.setPosition(start);
        return std::nullopt;
    }
    if (m_cursor.on(U'+') && isDigit(m_cursor.sign(1))) {
        m_cursor.advance();
        out.added = m_cursor.takeNumber();
        if (out.added < 1 || out.added > kMostLeaves) {
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

std::optional<LeafRef> Reader::ref(Leading kind) {
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

bool Reader::takeDash() {
    const std::size_t start = m_cursor.position();
    m_cursor.skipSpaces();
    const bool words = m_cursor.takeWord("to");
    if (!words && !m_cursor.take(U'-')) {
        m_cursor.setPosition(start);
        return false;
    }
    m_cursor.take(U'-');
    m_cursor.skipSpaces();
    return true;
}

bool Reader::endsHere() const {
    GlyphCursor ahead = m_cursor;
    ahead.skipSpaces();
    return ahead.atEnd() || ahead.on(U',') || ahead.on(U';') || ahead.startsWith("and ");
}

// 223–30 is pages 223 to 230; C1–4 ends at C4.
std::optional<LeafRef> Reader::spanEnd(const LeafRef& first, Leading kind) {
    if (const auto* leaf = std::get_if<SignedLeaf>(&first)) {
        const std::size_t start = m_cursor.position();
        const int sub = m_cursor.takeNumber(GlyphLevel::subscript);
        const int last = sub >= 0 ? sub : m_cursor.takeNumber();
        if (last >= 1 && last <= kMostLeaves) {
            SignedLeaf end = *leaf;
            end.leaf = last;
            end.added = 0;
            end.side = side();
            if (endsHere()) {
                return end;
            }
        }
        m_cursor.setPosition(start);
    }
    const Leading said = leading();
    std::optional<LeafRef> last = ref(said == Leading::none ? kind : said);
    const auto complete = [](PrintedNumber& end, const PrintedNumber& begin) {
        if (end.sequence == 1) {
            end.sequence = begin.sequence;
        }
        for (int power = 10;
             end.style == NumeralStyle::arabic && end.value < begin.value && power <= begin.value;
             power *= 10) {
            if (end.value < power) {
                end.value += begin.value / power * power;
                break;
            }
        }
    };
    if (last && std::holds_alternative<PageRef>(first) && std::holds_alternative<PageRef>(*last)) {
        complete(std::get<PageRef>(*last).page.number, std::get<PageRef>(first).page.number);
    }
    if (last && std::holds_alternative<FolioRef>(first) &&
        std::holds_alternative<FolioRef>(*last)) {
        complete(std::get<FolioRef>(*last).folio.number, std::get<FolioRef>(first).folio.number);
    }
    return last;
}

std::optional<LeafSetItem> Reader::spanFrom(LeafRef first, Leading kind) {
    m_before = first;
    m_last = kind;
    if (!takeDash()) {
        return LeafSpan{std::move(first), std::nullopt};
    }
    const std::size_t end = m_cursor.position();
    std::optional<LeafRef> last = spanEnd(first, kind);
    if (last && last->index() != first.index()) {
        m_cursor.setPosition(end);
    }
    if (!last || last->index() != first.index()) {
        return std::nullopt;
    }
    return LeafSpan{std::move(first), std::move(last)};
}

std::optional<LeafSetItem> Reader::gatherings() {
    const std::size_t start = m_cursor.position();
    std::optional<Signature> first = readSignature(m_cursor, true);
    if (!first) {
        return std::nullopt;
    }
    GatheringSpan out{*first, std::nullopt};
    if (takeDash()) {
        out.last = readSignature(m_cursor, true);
        if (!out.last) {
            m_cursor.setPosition(start);
            return std::nullopt;
        }
    }
    if (!endsHere()) {
        m_cursor.setPosition(start);
        return std::nullopt;
    }
    return out;
}

std::optional<LeafSetItem> Reader::countOf() {
    const std::size_t start = m_cursor.position();
    const int count = m_cursor.takeNumber();
    m_cursor.skipSpaces();
    static constexpr std::array<std::pair<std::string_view, Countable>, 8> kWords{{
        {"leaves", Countable::leaves},
        {"leaf", Countable::leaves},
        {"plates", Countable::plates},
        {"plate", Countable::plates},
        {"gatherings", Countable::gatherings},
        {"gathering", Countable::gatherings},
        {"quires", Countable::gatherings},
        {"quire", Countable::gatherings},
    }};
    for (const auto& [word, what] : kWords) {
        if (count >= 1 && count <= kMostPages && m_cursor.takeWord(word) && endsHere()) {
            return CountOf{count, what};
        }
    }
    m_cursor.setPosition(start);
    return std::nullopt;
}

std::optional<LeafSetItem> Reader::item() {
    for (const std::string_view all :
         {"whole book", "all leaves", "throughout", "the whole book", "all"}) {
        if (m_cursor.takeWord(all)) {
            return WholeBook{};
        }
    }
    if (isDigit(m_cursor.sign())) {
        if (std::optional<LeafSetItem> counted = countOf()) {
            return counted;
        }
    }
    const std::size_t start = m_cursor.position();
    const Leading kind = leading();
    if (kind == Leading::gathering) {
        m_before.reset();
        m_last = kind;
        return gatherings();
    }
    if (kind == Leading::none && m_last == Leading::gathering) {
        if (std::optional<LeafSetItem> more = gatherings()) {
            return more;
        }
    }
    if (std::optional<LeafRef> first = ref(kind)) {
        return spanFrom(*first, kind);
    }
    // "C1, 3" goes on with C3, "p. 12, 15" with p. 15; a lone mark is its whole gathering.
    m_cursor.setPosition(start);
    if (m_before && std::holds_alternative<SignedLeaf>(*m_before)) {
        const int leaf = m_cursor.takeNumber();
        if (leaf >= 1 && leaf <= kMostLeaves) {
            SignedLeaf next = std::get<SignedLeaf>(*m_before);
            next.leaf = leaf;
            next.added = 0;
            next.side = side();
            return spanFrom(next, Leading::none);
        }
        m_cursor.setPosition(start);
    } else if (m_before && (isDigit(m_cursor.sign()) || m_last != Leading::none)) {
        if (std::optional<LeafRef> next = ref(m_last)) {
            return spanFrom(*next, m_last);
        }
        m_cursor.setPosition(start);
    }
    if (isDigit(m_cursor.sign()) && !isLetter(m_cursor.sign(1))) {
        return std::nullopt; // a bare number points at nothing
    }
    return gatherings();
}

bool Reader::takeSeparator() {
    m_cursor.skipSpaces();
    bool taken = m_cursor.take(U',') || m_cursor.take(U';');
    m_cursor.skipSpaces();
    taken = m_cursor.takeWord("and") || taken;
    m_cursor.skipSpaces();
    return taken;
}

tl::expected<LeafRef, TextError> Reader::single() {
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

tl::expected<LeafSet, TextError> Reader::set() {
    LeafSet out;
    m_cursor.skipSpaces();
    if (m_cursor.atEnd()) {
        return tl::unexpected(error(TextProblem::empty));
    }
    do {
        const std::optional<LeafSetItem> next = item();
        if (!next) {
            return tl::unexpected(error(TextProblem::malformed));
        }
        out.items.push_back(*next);
    } while (takeSeparator());
    if (!m_cursor.atEnd()) {
        return tl::unexpected(error(TextProblem::trailing));
    }
    return out;
}

} // namespace

tl::expected<LeafRef, TextError> parseLeafRef(std::string_view text) {
    return Reader(text).single();
}

tl::expected<LeafSet, TextError> parseLeafSet(std::string_view text) {
    return Reader(text).set();
}

} // namespace headcap::core
