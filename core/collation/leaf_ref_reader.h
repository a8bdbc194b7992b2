// Reads one leaf reference or a set of them. Internal to their reader: leaf_ref.h is what others
// use.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/collation/glyphs.h"
#include "core/collation/leaf_ref.h"

namespace headcap::core {

inline constexpr int kMostLeavesNamed = 999;
inline constexpr int kMostPagesNamed = 99'999;

// The reader of one text: the cursor, and where it gave up.
class LeafRefReader {
public:
    explicit LeafRefReader(std::string_view text)
        : m_glyphs(toGlyphs(text)), m_cursor(m_glyphs, text.size()) {}

    tl::expected<LeafRef, TextError> single();
    tl::expected<LeafSet, TextError> set();

private:
    enum class Leading { none, folio, page, plate, gathering };

    // One place: leaf_ref.cpp.
    Leading leading();
    std::optional<LeafRef> ref(Leading kind);
    std::optional<SignedLeaf> signedLeaf();
    std::optional<PrintedNumber> number();
    std::optional<PlateRef> plate();
    Side side();

    // Sets: leaf_set_reader.cpp.
    std::optional<LeafSetItem> item();
    std::optional<LeafSetItem> countOf();
    std::optional<LeafSetItem> gatherings();
    std::optional<LeafSetItem> spanFrom(LeafRef first, Leading kind);
    std::optional<LeafRef> spanEnd(const LeafRef& first, Leading kind);
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

} // namespace headcap::core
