#include <array>
#include <utility>

#include "core/collation/leaf_ref_reader.h"

namespace headcap::core {

bool LeafRefReader::takeDash() {
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

bool LeafRefReader::endsHere() const {
    GlyphCursor ahead = m_cursor;
    ahead.skipSpaces();
    return ahead.atEnd() || ahead.on(U',') || ahead.on(U';') || ahead.startsWith("and ");
}

// 223–30 is pages 223 to 230; C1–4 ends at C4.
std::optional<LeafRef> LeafRefReader::spanEnd(const LeafRef& first, Leading kind) {
    if (const auto* leaf = std::get_if<SignedLeaf>(&first)) {
        const std::size_t start = m_cursor.position();
        const int sub = m_cursor.takeNumber(GlyphLevel::subscript);
        const int last = sub >= 0 ? sub : m_cursor.takeNumber();
        if (last >= 1 && last <= kMostLeavesNamed) {
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

std::optional<LeafSetItem> LeafRefReader::spanFrom(LeafRef first, Leading kind) {
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

std::optional<LeafSetItem> LeafRefReader::gatherings() {
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

std::optional<LeafSetItem> LeafRefReader::countOf() {
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
        if (count >= 1 && count <= kMostPagesNamed && m_cursor.takeWord(word) && endsHere()) {
            return CountOf{count, what};
        }
    }
    m_cursor.setPosition(start);
    return std::nullopt;
}

std::optional<LeafSetItem> LeafRefReader::item() {
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
        if (leaf >= 1 && leaf <= kMostLeavesNamed) {
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

bool LeafRefReader::takeSeparator() {
    m_cursor.skipSpaces();
    bool taken = m_cursor.take(U',') || m_cursor.take(U';');
    m_cursor.skipSpaces();
    taken = m_cursor.takeWord("and") || taken;
    m_cursor.skipSpaces();
    return taken;
}

tl::expected<LeafSet, TextError> LeafRefReader::set() {
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

} // namespace headcap::core
