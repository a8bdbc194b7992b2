#include "core/collation/glyphs.h"

namespace headcap::core {

char32_t GlyphCursor::sign(std::size_t ahead) const {
    return m_at + ahead < m_end ? (*m_glyphs)[m_at + ahead].sign : 0;
}

GlyphLevel GlyphCursor::level(std::size_t ahead) const {
    return m_at + ahead < m_end ? (*m_glyphs)[m_at + ahead].level : GlyphLevel::line;
}

bool GlyphCursor::on(char32_t wanted, std::size_t ahead) const {
    return m_at + ahead < m_end && sign(ahead) == wanted && level(ahead) == GlyphLevel::line;
}

bool GlyphCursor::isSuperscript(std::size_t ahead) const {
    return m_at + ahead < m_end && level(ahead) == GlyphLevel::superscript;
}

bool GlyphCursor::isSubscript(std::size_t ahead) const {
    return m_at + ahead < m_end && level(ahead) == GlyphLevel::subscript;
}

std::size_t GlyphCursor::byteOffset() const {
    return m_at < m_glyphs->size() ? (*m_glyphs)[m_at].at : m_textSize;
}

bool GlyphCursor::take(char32_t wanted) {
    if (!on(wanted)) {
        return false;
    }
    advance();
    return true;
}

bool GlyphCursor::skipSpaces() {
    const std::size_t from = m_at;
    while (!atEnd() && isSpace(sign())) {
        advance();
    }
    return m_at != from;
}

bool GlyphCursor::startsWith(std::string_view ascii) const {
    for (std::size_t i = 0; i < ascii.size(); ++i) {
        const char32_t wanted = static_cast<unsigned char>(ascii[i]);
        if (m_at + i >= m_end || level(i) != GlyphLevel::line ||
            toLower(sign(i)) != toLower(wanted)) {
            return false;
        }
    }
    return true;
}

bool GlyphCursor::takeWord(std::string_view word) {
    if (!startsWith(word) || isLetter(sign(word.size()))) {
        return false;
    }
    advance(word.size());
    return true;
}

int GlyphCursor::takeNumber(GlyphLevel wanted) {
    if (atEnd() || level() != wanted || !isDigit(sign())) {
        return -1;
    }
    int value = 0;
    while (!atEnd() && level() == wanted && isDigit(sign())) {
        value = value >= kNumberTooLarge / 10 ? kNumberTooLarge
                                              : value * 10 + static_cast<int>(sign() - U'0');
        advance();
    }
    return std::min(value, kNumberTooLarge);
}

} // namespace headcap::core
