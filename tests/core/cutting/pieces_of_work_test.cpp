#include "core/cutting/pieces_of_work.h"

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

Length mm(std::int64_t n) {
    return Length::millimetres(n);
}
Length um(std::int64_t n) {
    return Length::micrometres(n);
}

const WorkHouseValues kHouse;
const MeasuredBook kA5{mm(148), mm(210), mm(20), mm(2)};

const WorkPiece* find(const std::vector<WorkPiece>& pieces, PieceUse use) {
    for (const WorkPiece& piece : pieces) {
        if (piece.use == use) {
            return &piece;
        }
    }
    return nullptr;
}

// A book measured over the covers of the published case gives its text block back: leaf and square
// 151, boards 216, and 24 over both.
TEST(MeasuredBook, ofABoundBookIsReckonedFromItsCovers) {
    const MeasuredBook block = textBlockOf({mm(151), mm(216), mm(24), mm(2)}, kHouse);
    EXPECT_EQ(block.width, kA5.width);
    EXPECT_EQ(block.height, kA5.height);
    EXPECT_EQ(block.thickness, kA5.thickness);
    EXPECT_EQ(textBlockOf({}, kHouse).height, Length{}); // what was not measured stays so
}

// Dingword, "How to calculate the hard cover size for a book block?", 2012: board width less
// 3.5 mm, height more by 2 × 3, spine and two boards less 0.5, gaps of 10, turn-ins of 17.
TEST(CasePieces, followThePublishedFormula) {
    const std::vector<WorkPiece> pieces = casePieces(kA5, kHouse);
    const WorkPiece* board = find(pieces, PieceUse::board);
    const WorkPiece* spine = find(pieces, PieceUse::spinePiece);
    const WorkPiece* cover = find(pieces, PieceUse::cover);
    ASSERT_TRUE(board && spine && cover);
    EXPECT_EQ(board->width, um(144'500));
    EXPECT_EQ(board->height, mm(216));
    EXPECT_EQ(board->count, 2);
    EXPECT_EQ(spine->width, um(23'500));
    EXPECT_EQ(spine->height, mm(216));
    EXPECT_EQ(cover->width, um(366'500));
    EXPECT_EQ(cover->height, mm(250));
    EXPECT_EQ(cover->source, FigureSource::published);
}

TEST(CasePieces, areHouseValuesOnceTheWorkshopChangesOne) {
    WorkHouseValues house;
    house.caseGap = mm(8);
    EXPECT_EQ(casePieces(kA5, house)[0].source, FigureSource::house);
}

// One folded sheet gives pastedown and free leaf, its fold along the grain.
TEST(EndpaperPieces, foldPastedownAndFreeLeafFromOneSheetAlongTheGrain) {
    const std::vector<WorkPiece> pieces = endpaperPieces(EndpaperKind::tippedFold, kA5, kHouse);
    ASSERT_EQ(pieces.size(), 1U);
    EXPECT_EQ(pieces[0].count, 2);
    EXPECT_EQ(pieces[0].grain, GrainWay::alongHeight);
    EXPECT_EQ(pieces[0].width, (mm(148) + kHouse.endpaperTrim) * 2);
    EXPECT_EQ(pieces[0].height, mm(210) + kHouse.endpaperTrim * 2);
}

TEST(EndpaperPieces, haveWhatEachKindNeeds) {
    const auto uses = [](EndpaperKind kind) { return endpaperPieces(kind, kA5, kHouse); };
    EXPECT_TRUE(find(uses(EndpaperKind::zigzag), PieceUse::zigzagFold));
    EXPECT_TRUE(find(uses(EndpaperKind::made), PieceUse::decoratedFold)->isPasted);
    const auto cloth = uses(EndpaperKind::clothJointed);
    EXPECT_EQ(find(cloth, PieceUse::jointStrip)->stock, PieceStock::cloth);
    EXPECT_TRUE(find(cloth, PieceUse::endpaperLeaf));
    const auto leather = uses(EndpaperKind::leatherJointed);
    EXPECT_EQ(find(leather, PieceUse::jointStrip)->grain, GrainWay::none);
    EXPECT_TRUE(find(uses(EndpaperKind::guarded), PieceUse::guardStrip));
    EXPECT_GT(uses(EndpaperKind::wrappedRound)[0].width, uses(EndpaperKind::sewnFold)[0].width);
}

TEST(Strips, areCutByLengthAndCount) {
    const auto guards = guardStrips({{mm(210), 8}, {mm(60), 3}}, kHouse);
    ASSERT_EQ(guards.size(), 2U);
    EXPECT_EQ(guards[0].width, kHouse.guardWidth);
    EXPECT_EQ(guards[1].height, mm(60));
    EXPECT_EQ(guards[1].count, 3);
    EXPECT_EQ(hingeStrips({{mm(210), 8}}, kHouse)[0].width, kHouse.hingeWidth);
}

TEST(SpineLinings, spreadOverTheJointsInTheFirstLayerOnly) {
    const auto linings = spineLinings(kA5, 2, kHouse);
    ASSERT_EQ(linings.size(), 2U);
    EXPECT_EQ(linings[0].width - linings[1].width, kHouse.liningOverlap * 2);
    EXPECT_LT(linings[1].height, kA5.height);
}

TEST(LeatherPieces, growFromRebackToFull) {
    Length width;
    for (const LeatherKind kind : {LeatherKind::reback, LeatherKind::quarter, LeatherKind::full}) {
        const auto pieces = leatherPieces(kind, kA5, kHouse);
        EXPECT_GT(pieces[0].width, width);
        EXPECT_GT(pieces[0].height, mm(216));
        width = pieces[0].width;
    }
    const auto half = leatherPieces(LeatherKind::half, kA5, kHouse);
    EXPECT_EQ(find(half, PieceUse::corner)->count, 4);
}

// What must hold of any box: each part holds the one inside it.
class BoxPieces : public testing::TestWithParam<MeasuredBook> {};

TEST_P(BoxPieces, holdTheBookAndEachOther) {
    const MeasuredBook& book = GetParam();
    const auto pieces = dropSpineBoxPieces(book, kHouse);
    const WorkPiece* tray = find(pieces, PieceUse::trayBase);
    const WorkPiece* trayWall = find(pieces, PieceUse::trayLongWall);
    const WorkPiece* lid = find(pieces, PieceUse::lidBase);
    const WorkPiece* lidWall = find(pieces, PieceUse::lidLongWall);
    const WorkPiece* board = find(pieces, PieceUse::board);
    ASSERT_TRUE(tray && trayWall && lid && lidWall && board);
    EXPECT_GT(tray->width, book.width);
    EXPECT_GT(tray->height, book.height);
    EXPECT_GT(trayWall->width - book.board, book.thickness);
    EXPECT_GT(lid->width, tray->width + book.board);
    EXPECT_GT(lid->height, tray->height + book.board * 2);
    EXPECT_GT(lidWall->width - book.board, trayWall->width);
    // As they are covered: the book goes into the tray, and the lid goes over it, with their ease
    // and nothing less.
    const Length cloth = kHouse.boxCloth;
    EXPECT_EQ(tray->height - cloth * 2 - book.height, kHouse.boxEase * 2);
    EXPECT_EQ(tray->width - cloth - book.width, kHouse.boxEase);
    EXPECT_EQ(trayWall->width - book.board - kHouse.boxLining - book.thickness, kHouse.boxEase);
    const Length trayOver = tray->height + book.board * 2 + cloth * 2;
    EXPECT_EQ(lid->height - cloth * 2 - trayOver, kHouse.trayEase * 2);
    EXPECT_EQ(lid->width - cloth - (tray->width + book.board + cloth), kHouse.trayEase);
    EXPECT_GT(board->width, lid->width + book.board);
    EXPECT_GT(board->height, lid->height + book.board * 2);
}

TEST_P(BoxPieces, foldFourFlapsRightRoundTheBook) {
    const MeasuredBook& book = GetParam();
    const auto pieces = fourFlapPieces(book, kHouse);
    const WorkPiece* tall = find(pieces, PieceUse::flapStripTall);
    const WorkPiece* wide = find(pieces, PieceUse::flapStripWide);
    ASSERT_TRUE(tall && wide);
    EXPECT_GE(tall->height, (book.height + book.thickness) * 2);
    EXPECT_GT(wide->width, book.width * 3 + book.thickness * 2);
    EXPECT_GT(wide->height, book.height);
}

INSTANTIATE_TEST_SUITE_P(Books, BoxPieces,
                         testing::Values(MeasuredBook{mm(148), mm(210), mm(20), mm(2)},
                                         MeasuredBook{mm(90), mm(140), mm(45), mm(3)},
                                         MeasuredBook{mm(300), mm(460), mm(80), mm(3)}));

} // namespace
} // namespace headcap::core
