// The pieces of common work, from the book as measured. The case follows a published formula; all
// else is by house values, which the workshop edits: WorkHouseValues says each. Sizes are to be
// cut, height along the spine; grain runs along the height wherever the material has any.
#pragma once

#include <vector>

#include "core/cutting/cut_plan.h"
#include "core/values/measures.h"

namespace headcap::core {

enum class PieceUse {
    board,
    spinePiece,
    cover,
    endpaperFold,  // pastedown and free leaf of one sheet, folded along the grain
    endpaperLeaf,  // a pastedown or fly leaf alone
    decoratedFold, // of a made endpaper, pasted to a plain fold
    zigzagFold,
    jointStrip, // of cloth or leather, in the joint inside the board
    guardStrip,
    hinge,
    spineLining,
    wrapper,
    flapStripTall, // four-flap box: folds over head and tail
    flapStripWide, // folds over fore edge and spine
    trayBase,
    trayLongWall,
    trayShortWall,
    lidBase,
    lidLongWall,
    lidShortWall,
    spineLeather,
    corner,
    coverLeather,
};

enum class PieceStock {
    board,
    endpaper,
    repairPaper,
    lining,
    cloth,
    leather,
    boxCard,
    wrapperPaper
};

// Where a figure comes from, to be shown beside it.
enum class FigureSource { published, house };

struct WorkPiece {
    PieceUse use = PieceUse::board;
    PieceStock stock = PieceStock::board;
    Length width, height;
    int count = 1;
    GrainWay grain = GrainWay::alongHeight;
    bool isPasted = false; // all over, so that it stretches: see Stretch
    FigureSource source = FigureSource::house;
};

// A text block, sewn, as measured with its endpapers.
struct MeasuredBook {
    Length width; // of a leaf, spine fold to fore edge
    Length height;
    Length thickness; // over the spine
    Length board;     // the thickness of the boards to be used
};

struct WorkHouseValues {
    Length square = Length::millimetres(3);           // of the boards beyond the leaves
    Length boardSetBack = Length::micrometres(3'500); // board narrower than the leaf
    Length spineEase = Length::micrometres(500);      // spine piece less than spine and both boards
    Length caseGap = Length::millimetres(10);         // between board and spine piece
    Length caseTurnIn = Length::millimetres(17);

    Length endpaperTrim = Length::millimetres(3);  // left on each edge, to be cut after drying
    Length tipStrip = Length::millimetres(3);      // pasted edge of a tipped endpaper
    Length zigzag = Length::millimetres(6);        // each limb of the zigzag
    Length jointOverlap = Length::millimetres(15); // of a cloth or leather joint, on leaf and board
    Length joint = Length::millimetres(8);
    Length endpaperStub = Length::millimetres(12); // wrapped round a gathering, or guarded

    Length guardWidth = Length::millimetres(12);
    Length hingeWidth = Length::millimetres(10);
    Length liningOverlap = Length::millimetres(25); // of the first lining, on each board
    Length liningShort = Length::millimetres(3);    // linings end before head and tail

    Length wrapperFlap = Length::millimetres(60);
    Length boxEase = Length::millimetres(2);     // about the book, on each side of a box
    Length card = Length::millimetres(1);        // the thickness of box card
    int flapPerMille = 500;                      // how far the tall flaps reach over the book
    Length trayEase = Length::millimetres(1);    // between tray and lid, as they are covered
    Length boxCloth = Length::micrometres(350);  // one layer of it, on every wall inside and out
    Length boxLining = Length::micrometres(250); // of the bases
    Length boxSquare = Length::millimetres(3);

    Length leatherLift = Length::millimetres(15); // under the old leather of a reback
    Length leatherTurnIn = Length::millimetres(15);
    int spineArcPerMille = 1'150; // the round of a spine to its thickness
    int quarterPerMille = 200;    // of the board's width covered by a quarter leather
    int cornerPerMille = 250;     // of the board's width, along each edge of a corner
};

// What the text block of a bound book comes to, where the book was measured over its covers: less
// the squares and both boards. A guess, until the block itself is measured.
[[nodiscard]] MeasuredBook textBlockOf(const MeasuredBook& overCovers,
                                       const WorkHouseValues& house);

// The case: boards, spine piece and cover. Published by Dingword, "How to calculate the hard cover
// size for a book block?", 2012, whose allowances are the values' own; with those unchanged the
// pieces are marked as published.
[[nodiscard]] std::vector<WorkPiece> casePieces(const MeasuredBook& book,
                                                const WorkHouseValues& house);

enum class EndpaperKind {
    tippedFold,
    sewnFold,
    zigzag,
    made,
    clothJointed,
    leatherJointed,
    guarded,
    wrappedRound, // a stub round the first, and last, gathering
};

// For both ends of the book (kinds: Cockerell 1901, Zaehnsdorf 1880; sizes: house values).
[[nodiscard]] std::vector<WorkPiece> endpaperPieces(EndpaperKind kind, const MeasuredBook& book,
                                                    const WorkHouseValues& house);

// The first of cloth, over the joints; the others of paper, as wide as the spine.
[[nodiscard]] std::vector<WorkPiece> spineLinings(const MeasuredBook& book, int layers,
                                                  const WorkHouseValues& house);

struct StripsWanted {
    Length length;
    int count = 1;
};
[[nodiscard]] std::vector<WorkPiece> guardStrips(const std::vector<StripsWanted>& wanted,
                                                 const WorkHouseValues& house);
[[nodiscard]] std::vector<WorkPiece> hingeStrips(const std::vector<StripsWanted>& wanted,
                                                 const WorkHouseValues& house);

// For wrappers and boxes the book is measured over its covers.
[[nodiscard]] std::vector<WorkPiece> wrapperPieces(const MeasuredBook& book,
                                                   const WorkHouseValues& house);
[[nodiscard]] std::vector<WorkPiece> fourFlapPieces(const MeasuredBook& book,
                                                    const WorkHouseValues& house);
// Tray, lid and case; walls stand round their base.
[[nodiscard]] std::vector<WorkPiece> dropSpineBoxPieces(const MeasuredBook& book,
                                                        const WorkHouseValues& house);

enum class LeatherKind { reback, quarter, half, full };
[[nodiscard]] std::vector<WorkPiece> leatherPieces(LeatherKind kind, const MeasuredBook& book,
                                                   const WorkHouseValues& house);

} // namespace headcap::core
