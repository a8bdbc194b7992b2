#include "core/cutting/pieces_of_work.h"

namespace headcap::core {

namespace {

constexpr int kEnds = 2;

// The pieces of one book's endpapers, put together kind by kind.
class Endpapers {
public:
    Endpapers(const MeasuredBook& book, const WorkHouseValues& house)
        : m_house(house), m_leaf(book.width + house.endpaperTrim),
          m_height(book.height + house.endpaperTrim * 2) {}

    [[nodiscard]] WorkPiece fold(PieceUse use = PieceUse::endpaperFold, Length more = {}) const {
        return piece(use, PieceStock::endpaper, m_leaf * 2 + more);
    }
    [[nodiscard]] WorkPiece leaf() const {
        return piece(PieceUse::endpaperLeaf, PieceStock::endpaper, m_leaf);
    }
    // In the joint: over leaf and board, and across the joint between.
    [[nodiscard]] WorkPiece joint(PieceStock stock) const {
        WorkPiece strip =
            piece(PieceUse::jointStrip, stock, m_house.jointOverlap * 2 + m_house.joint);
        strip.isPasted = true;
        strip.grain = stock == PieceStock::leather ? GrainWay::none : GrainWay::alongHeight;
        return strip;
    }
    [[nodiscard]] WorkPiece guard() const {
        return piece(PieceUse::guardStrip, PieceStock::repairPaper, m_house.endpaperStub * 2);
    }

private:
    [[nodiscard]] WorkPiece piece(PieceUse use, PieceStock stock, Length width) const {
        return {use, stock, width, m_height, kEnds};
    }

    const WorkHouseValues& m_house;
    Length m_leaf, m_height;
};

} // namespace

std::vector<WorkPiece> endpaperPieces(EndpaperKind kind, const MeasuredBook& book,
                                      const WorkHouseValues& house) {
    const Endpapers ends(book, house);
    switch (kind) {
    case EndpaperKind::tippedFold:
    case EndpaperKind::sewnFold:
        return {ends.fold()};
    case EndpaperKind::zigzag:
        // A plain fold, and the outer one with three limbs of the zigzag at its spine.
        return {ends.fold(), ends.fold(PieceUse::zigzagFold, house.zigzag * 3)};
    case EndpaperKind::made: {
        WorkPiece decorated = ends.fold(PieceUse::decoratedFold);
        decorated.isPasted = true;
        return {ends.fold(), decorated};
    }
    case EndpaperKind::clothJointed:
        return {ends.fold(), ends.leaf(), ends.joint(PieceStock::cloth)};
    case EndpaperKind::leatherJointed:
        return {ends.fold(), ends.leaf(), ends.joint(PieceStock::leather)};
    case EndpaperKind::guarded:
        return {ends.fold(), ends.guard()};
    case EndpaperKind::wrappedRound:
        return {ends.fold(PieceUse::endpaperFold, house.endpaperStub)};
    }
    return {};
}

namespace {

std::vector<WorkPiece> strips(PieceUse use, Length width, const std::vector<StripsWanted>& wanted) {
    std::vector<WorkPiece> pieces;
    for (const StripsWanted& strip : wanted) {
        pieces.push_back({use, PieceStock::repairPaper, width, strip.length, strip.count});
    }
    return pieces;
}

} // namespace

std::vector<WorkPiece> guardStrips(const std::vector<StripsWanted>& wanted,
                                   const WorkHouseValues& house) {
    return strips(PieceUse::guardStrip, house.guardWidth, wanted);
}

std::vector<WorkPiece> hingeStrips(const std::vector<StripsWanted>& wanted,
                                   const WorkHouseValues& house) {
    return strips(PieceUse::hinge, house.hingeWidth, wanted);
}

} // namespace headcap::core
