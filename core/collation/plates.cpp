#include "core/collation/plates.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/collation/glyphs.h"

namespace headcap::core {
namespace {

struct Lead {
    std::string_view words;
    PlatePlacing placing;
};

constexpr std::array kLeads{
    Lead{"to face", PlatePlacing::facing},  Lead{"facing", PlatePlacing::facing},
    Lead{"faces", PlatePlacing::facing},    Lead{"opposite", PlatePlacing::facing},
    Lead{"opp.", PlatePlacing::facing},     Lead{"after", PlatePlacing::after},
    Lead{"following", PlatePlacing::after}, Lead{"before", PlatePlacing::before},
};

// Places compare by the side they stand at: a plate facing a verso stands behind that leaf, one
// facing a recto before it.
std::optional<std::size_t> order(const LaidBook& book, const PlateCalled& plate) {
    switch (plate.place.placing) {
    case PlatePlacing::frontispiece:
        return 0;
    case PlatePlacing::atEnd:
        return book.leaves.size() * 2;
    case PlatePlacing::unplaced:
        return std::nullopt;
    default:
        break;
    }
    const auto at = locate(book, *plate.place.where);
    if (!at) {
        return std::nullopt;
    }
    const bool behind = plate.place.placing == PlatePlacing::after ||
                        (plate.place.placing == PlatePlacing::facing && at->side == Side::verso);
    return at->leaf * 2 + (behind ? 2 : 0);
}

} // namespace

tl::expected<PlatePlace, TextError> parsePlatePlace(std::string_view text) {
    const std::vector<Glyph> glyphs = toGlyphs(text);
    GlyphCursor cursor(glyphs, text.size());
    cursor.skipSpaces();
    if (cursor.atEnd()) {
        return tl::unexpected(TextError{TextProblem::empty, 0});
    }
    const auto closes = [&] {
        cursor.take(U'.');
        cursor.skipSpaces();
        return cursor.atEnd();
    };
    for (const auto& [words, placing] :
         {Lead{"frontispiece", PlatePlacing::frontispiece}, Lead{"at the end", PlatePlacing::atEnd},
          Lead{"at end", PlatePlacing::atEnd}, Lead{"unplaced", PlatePlacing::unplaced}}) {
        if (cursor.takeWord(words)) {
            if (!closes()) {
                return tl::unexpected(TextError{TextProblem::trailing, cursor.byteOffset()});
            }
            return PlatePlace{placing, std::nullopt};
        }
    }
    for (const Lead& lead : kLeads) {
        if (!cursor.startsWith(lead.words)) {
            continue;
        }
        cursor.advance(lead.words.size());
        cursor.skipSpaces();
        const std::size_t at = cursor.byteOffset();
        auto where = parseLeafRef(text.substr(at));
        if (!where) {
            return tl::unexpected(TextError{where.error().problem, at + where.error().at});
        }
        return PlatePlace{lead.placing, *where};
    }
    return tl::unexpected(TextError{TextProblem::malformed, cursor.byteOffset()});
}

std::string toText(const PlatePlace& place) {
    const std::string where = place.where ? toText(*place.where) : std::string();
    switch (place.placing) {
    case PlatePlacing::facing:
        return "to face " + where;
    case PlatePlacing::before:
        return "before " + where;
    case PlatePlacing::after:
        return "after " + where;
    case PlatePlacing::frontispiece:
        return "frontispiece";
    case PlatePlacing::atEnd:
        return "at end";
    case PlatePlacing::unplaced:
        break;
    }
    return "unplaced";
}

PlateCheck checkPlates(const LaidBook& book, const std::vector<PlateCalled>& plates) {
    PlateCheck out;
    std::size_t before = 0;
    for (std::size_t i = 0; i < plates.size(); ++i) {
        const PlateCalled& plate = plates[i];
        const auto find = [&](PlateProblem problem,
                              std::optional<PlaceProblem> why = std::nullopt) {
            out.findings.push_back({i, problem, why});
        };
        ++out.called;
        out.present += plate.present ? 1 : 0;
        if (!plate.present) {
            find(PlateProblem::lacking);
        }
        for (std::size_t earlier = 0; earlier < i; ++earlier) {
            if (!plate.label.empty() && plates[earlier].label == plate.label) {
                find(PlateProblem::labelTwice);
                break;
            }
        }
        if (plate.place.placing == PlatePlacing::unplaced) {
            find(PlateProblem::unplaced);
            continue;
        }
        if (plate.place.where) {
            if (const auto at = locate(book, *plate.place.where); !at) {
                find(PlateProblem::placeNotInBook, at.error().problem);
                continue;
            }
        }
        const std::optional<std::size_t> place = order(book, plate);
        if (place && *place < before) {
            find(PlateProblem::outOfOrder);
        }
        before = place ? std::max(before, *place) : before;
    }
    return out;
}

} // namespace headcap::core
