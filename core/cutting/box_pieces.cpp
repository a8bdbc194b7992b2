#include "core/cutting/case_pieces.h"

namespace headcap::core {

namespace {

struct Inside {
    Length width, height, depth;
};

WorkPiece boxBoard(PieceUse use, Length width, Length height, int count) {
    return {use, PieceStock::board, width, height, count};
}

} // namespace

std::vector<WorkPiece> wrapperPieces(const MeasuredBook& book, const WorkHouseValues& house) {
    const Length around = book.width * 2 + book.thickness + house.boxEase + house.wrapperFlap * 2;
    return {{PieceUse::wrapper, PieceStock::wrapperPaper, around, book.height + house.boxEase, 1}};
}

std::vector<WorkPiece> fourFlapPieces(const MeasuredBook& book, const WorkHouseValues& house) {
    const Length depth = book.thickness + house.boxEase;
    const Length inner = book.width + house.boxEase;
    const Length tall = book.height + house.boxEase;
    const Length tallFlap = perMille(book.height, house.flapPerMille);
    // The wide strip lies outside the tall one, and is larger by its card.
    const Length outerDepth = depth + house.card * 2;
    const Length outerWidth = inner + house.card * 2;
    return {
        {PieceUse::flapStripTall, PieceStock::boxCard, inner, tall + (depth + tallFlap) * 2, 1},
        {PieceUse::flapStripWide, PieceStock::boxCard, (outerWidth + outerDepth) * 2 + outerWidth,
         tall + house.card * 2, 1},
    };
}

std::vector<WorkPiece> dropSpineBoxPieces(const MeasuredBook& book, const WorkHouseValues& house) {
    const Length board = book.board;
    // From board to board: the cloth that is turned in over the walls takes its share.
    const Inside tray{book.width + house.boxEase + house.boxCloth,
                      book.height + (house.boxEase + house.boxCloth) * 2,
                      book.thickness + house.boxEase + house.boxLining};
    // The lid closes over the tray: over one long wall, two short ones, and the tray's base.
    // Between the boards of two walls lie the cloth outside the one and inside the other.
    const Length between = board + house.boxCloth * 2 + house.trayEase;
    const Inside lid{tray.width + between, tray.height + between * 2,
                     tray.depth + board + house.boxCloth + house.boxLining + house.trayEase};
    const Length trayWall = tray.depth + board;
    const Length lidWall = lid.depth + board;
    const Length caseWidth = lid.width + board + house.boxSquare;
    const Length caseHeight = lid.height + (board + house.boxSquare) * 2;
    const Length caseSpine = lidWall + board;
    const Length coverWidth = (caseWidth + house.joint + house.caseTurnIn) * 2 + caseSpine;
    return {
        boxBoard(PieceUse::trayBase, tray.width, tray.height, 1),
        boxBoard(PieceUse::trayLongWall, trayWall, tray.height + board * 2, 1),
        boxBoard(PieceUse::trayShortWall, tray.width, trayWall, 2),
        boxBoard(PieceUse::lidBase, lid.width, lid.height, 1),
        boxBoard(PieceUse::lidLongWall, lidWall, lid.height + board * 2, 1),
        boxBoard(PieceUse::lidShortWall, lid.width, lidWall, 2),
        boxBoard(PieceUse::board, caseWidth, caseHeight, 2),
        boxBoard(PieceUse::spinePiece, caseSpine, caseHeight, 1),
        {PieceUse::cover, PieceStock::cloth, coverWidth, caseHeight + house.caseTurnIn * 2, 1},
    };
}

} // namespace headcap::core
