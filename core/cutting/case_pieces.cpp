#include "core/cutting/case_pieces.h"

namespace headcap::core {

namespace {

bool isAsPublished(const WorkHouseValues& house) {
    const WorkHouseValues published;
    return house.square == published.square && house.boardSetBack == published.boardSetBack &&
           house.spineEase == published.spineEase && house.caseGap == published.caseGap &&
           house.caseTurnIn == published.caseTurnIn;
}

} // namespace

MeasuredBook textBlockOf(const MeasuredBook& overCovers, const WorkHouseValues& house) {
    const auto less = [](Length whole, Length by) { return whole > by ? whole - by : whole; };
    return {.width = less(overCovers.width, house.square),
            .height = less(overCovers.height, house.square * 2),
            .thickness = less(overCovers.thickness, overCovers.board * 2),
            .board = overCovers.board};
}

CaseSizes caseSizes(const MeasuredBook& book, const WorkHouseValues& house) {
    CaseSizes sizes;
    sizes.boardWidth = book.width - house.boardSetBack;
    sizes.height = book.height + house.square * 2;
    sizes.spineWidth = book.thickness + book.board * 2 - house.spineEase;
    sizes.coverWidth = (sizes.boardWidth + house.caseGap + house.caseTurnIn) * 2 + sizes.spineWidth;
    sizes.coverHeight = sizes.height + house.caseTurnIn * 2;
    return sizes;
}

std::vector<WorkPiece> casePieces(const MeasuredBook& book, const WorkHouseValues& house) {
    const CaseSizes sizes = caseSizes(book, house);
    const FigureSource source =
        isAsPublished(house) ? FigureSource::published : FigureSource::house;
    return {
        {PieceUse::board, PieceStock::board, sizes.boardWidth, sizes.height, 2,
         GrainWay::alongHeight, false, source},
        {PieceUse::spinePiece, PieceStock::board, sizes.spineWidth, sizes.height, 1,
         GrainWay::alongHeight, false, source},
        {PieceUse::cover, PieceStock::cloth, sizes.coverWidth, sizes.coverHeight, 1,
         GrainWay::alongHeight, false, source},
    };
}

std::vector<WorkPiece> leatherPieces(LeatherKind kind, const MeasuredBook& book,
                                     const WorkHouseValues& house) {
    const CaseSizes sizes = caseSizes(book, house);
    const Length spine = perMille(book.thickness, house.spineArcPerMille);
    const Length height = sizes.height + house.leatherTurnIn * 2;
    const auto leather = [&](PieceUse use, Length width, Length tall, int count) {
        return WorkPiece{use, PieceStock::leather, width, tall, count, GrainWay::none, true};
    };
    switch (kind) {
    case LeatherKind::reback:
        return {leather(PieceUse::spineLeather, spine + (house.joint + house.leatherLift) * 2,
                        height, 1)};
    case LeatherKind::quarter:
    case LeatherKind::half: {
        const Length onBoard = perMille(sizes.boardWidth, house.quarterPerMille);
        std::vector<WorkPiece> pieces{
            leather(PieceUse::spineLeather, spine + (house.joint + onBoard) * 2, height, 1)};
        if (kind == LeatherKind::half) {
            const Length side =
                perMille(sizes.boardWidth, house.cornerPerMille) + house.leatherTurnIn * 2;
            pieces.push_back(leather(PieceUse::corner, side, side, 4));
        }
        return pieces;
    }
    case LeatherKind::full:
        return {leather(PieceUse::coverLeather,
                        spine + (house.joint + sizes.boardWidth + house.leatherTurnIn) * 2, height,
                        1)};
    }
    return {};
}

std::vector<WorkPiece> spineLinings(const MeasuredBook& book, int layers,
                                    const WorkHouseValues& house) {
    std::vector<WorkPiece> pieces;
    const Length spine = perMille(book.thickness, house.spineArcPerMille);
    const Length height = book.height - house.liningShort * 2;
    for (int layer = 0; layer < layers; ++layer) {
        const bool isFirst = layer == 0;
        pieces.push_back({PieceUse::spineLining, isFirst ? PieceStock::cloth : PieceStock::lining,
                          isFirst ? spine + house.liningOverlap * 2 : spine, height, 1,
                          GrainWay::alongHeight, true});
    }
    return pieces;
}

} // namespace headcap::core
