// The format of a book, the folds of its sheet, in one short form: "2o", "4o", "8o", "12o",
// "obl. 4o". The format says nothing about the leaves of a gathering.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/collation/glyphs.h"

namespace headcap::core {

// "fol.", "2°", "4to", "8vo", "12mo", "quarto", "obl. 8°"; none where the text is no format.
[[nodiscard]] std::optional<std::string> formatName(std::string_view text);
// The same at a cursor, which moves past it.
[[nodiscard]] std::optional<std::string> takeFormat(GlyphCursor& cursor);

// A name as people write it: "8o" is 8°.
[[nodiscard]] std::string formatText(std::string_view name);

} // namespace headcap::core
