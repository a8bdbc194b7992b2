// A gathering as the house draws it: folds as arches standing on the spine at the foot, leaves
// rising from them with their references at the top. Lacking is a short stub with its reference
// struck and the word; loose a gap where leaf and arch should meet; supplied a double line and the
// word; cancelled a cut stub. Shape and word tell, colour only helps. On screen and on paper.
#pragma once

#include <optional>

#include <QFont>
#include <QRectF>

#include "app/look/palette.h"
#include "core/collation/gathering_picture.h"

class QPainter;

namespace headcap::app {

struct GatheringDrawing {
    const Colours& colours;
    QFont refs;                          // of the references
    QFont words;                         // of the words over them
    std::optional<std::size_t> looked{}; // the leaf being looked at
};

// Fills the area as far as the leaves need it, from the left; never wider than the area.
void drawGathering(QPainter& painter, const QRectF& area, const core::PicturedGathering& gathering,
                   const GatheringDrawing& drawing);

// What a leaf's state is called over the leaf; empty for one that is as it should be.
[[nodiscard]] QString words(core::LeafState state);

// The whole gathering in words, for those who do not see it: "K, 8 leaves: K2 lacking".
[[nodiscard]] QString describe(const core::PicturedGathering& gathering);

} // namespace headcap::app
