#include "core/collation/format_name.h"

#include <array>
#include <utility>
#include <vector>

namespace headcap::core {

std::optional<std::string> takeFormat(GlyphCursor& cursor) {
    const std::size_t start = cursor.position();
    std::string out;
    for (const std::string_view word : {"obl.", "oblong", "long", "agenda"}) {
        if (cursor.startsWith(word)) {
            cursor.advance(word.size());
            cursor.skipSpaces();
            out = word == "oblong" ? "obl. " : std::string(word) + " ";
            break;
        }
    }
    static constexpr std::array<std::pair<std::string_view, std::string_view>, 10> kWords{{
        {"folio", "2o"},
        {"fol.", "2o"},
        {"fol", "2o"},
        {"quarto", "4o"},
        {"octavo", "8o"},
        {"duodecimo", "12o"},
        {"sextodecimo", "16o"},
        {"broadsheet", "1o"},
        {"broadside", "1o"},
        {"sixteenmo", "16o"},
    }};
    for (const auto& [word, name] : kWords) {
        if (cursor.startsWith(word) && !isLetter(cursor.sign(word.size()))) {
            cursor.advance(word.size());
            return out + std::string(name);
        }
    }
    const int folds = cursor.takeNumber();
    if (folds >= 1 && folds <= 128) {
        for (const std::string_view ending : {"mo", "vo", "to", "o", "°", "ᵒ", "⁰"}) {
            const std::vector<Glyph> glyphs = toGlyphs(ending);
            bool fits = true;
            for (std::size_t i = 0; i < glyphs.size(); ++i) {
                fits =
                    fits && cursor.sign(i) == glyphs[i].sign && cursor.level(i) == glyphs[i].level;
            }
            if (fits && !isLetter(cursor.sign(glyphs.size()))) {
                cursor.advance(glyphs.size());
                return out + std::to_string(folds) + "o";
            }
        }
    }
    cursor.setPosition(start);
    return std::nullopt;
}

std::optional<std::string> formatName(std::string_view text) {
    const std::vector<Glyph> glyphs = toGlyphs(text);
    GlyphCursor cursor(glyphs, text.size());
    cursor.skipSpaces();
    std::optional<std::string> out = takeFormat(cursor);
    if (!out) {
        const int folds = cursor.takeNumber(); // a bare "8"
        out =
            folds >= 1 && folds <= 128 ? std::optional(std::to_string(folds) + "o") : std::nullopt;
    }
    cursor.take(U'.');
    cursor.skipSpaces();
    return cursor.atEnd() ? out : std::nullopt;
}

std::string formatText(std::string_view name) {
    return name.ends_with('o') ? std::string(name.substr(0, name.size() - 1)) + "°"
                               : std::string(name);
}

} // namespace headcap::core
