// What the pieces and kinds of work are called.
#pragma once

#include <QString>
#include <QStringList>

#include "core/cutting/pieces_of_work.h"
#include "core/materials/material.h"

namespace headcap::app {

[[nodiscard]] QString words(core::PieceUse use);
[[nodiscard]] QString words(core::PieceStock stock);

// Whether a piece of the work may be cut from a material of this class.
[[nodiscard]] bool mayBeCutFrom(core::PieceStock stock, core::MaterialClass kind);

// The work whose pieces can be proposed.
enum class Work {
    tippedFold,
    sewnFold,
    zigzag,
    made,
    clothJointed,
    leatherJointed,
    guarded,
    wrappedRound,
    casing,
    spineLinings,
    guards,
    hinges,
    wrapper,
    fourFlapBox,
    dropSpineBox,
    reback,
    quarterLeather,
    halfLeather,
    fullLeather,
};
[[nodiscard]] QStringList workNames();
// What of it is asked beside the book's own measures.
[[nodiscard]] bool asksCount(Work work);
// Of a wrapper and of boxes the covers are measured, of all else the text block.
[[nodiscard]] bool isOverCovers(Work work);
// A book gets the one or the other.
[[nodiscard]] bool isInsteadOf(Work one, Work other);
[[nodiscard]] std::vector<core::WorkPiece> piecesOf(Work work, const core::MeasuredBook& book,
                                                    const core::StripsWanted& strips,
                                                    const core::WorkHouseValues& house);

} // namespace headcap::app
