#include "app/stock/work_words.h"

#include <QCoreApplication>

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("work", text);
}

} // namespace

QString words(core::PieceUse use) {
    using U = core::PieceUse;
    switch (use) {
    case U::board:
        return tr("board");
    case U::spinePiece:
        return tr("spine piece");
    case U::cover:
        return tr("cover");
    case U::endpaperFold:
        return tr("endpaper fold");
    case U::endpaperLeaf:
        return tr("endpaper leaf");
    case U::decoratedFold:
        return tr("decorated fold");
    case U::zigzagFold:
        return tr("zigzag fold");
    case U::jointStrip:
        return tr("joint strip");
    case U::guardStrip:
        return tr("guard");
    case U::hinge:
        return tr("hinge");
    case U::spineLining:
        return tr("spine lining");
    case U::wrapper:
        return tr("wrapper");
    case U::flapStripTall:
        return tr("tall flap strip");
    case U::flapStripWide:
        return tr("wide flap strip");
    case U::trayBase:
        return tr("tray base");
    case U::trayLongWall:
        return tr("tray long wall");
    case U::trayShortWall:
        return tr("tray short wall");
    case U::lidBase:
        return tr("lid base");
    case U::lidLongWall:
        return tr("lid long wall");
    case U::lidShortWall:
        return tr("lid short wall");
    case U::spineLeather:
        return tr("spine leather");
    case U::corner:
        return tr("corner");
    case U::coverLeather:
        return tr("cover leather");
    }
    return {};
}

QString words(core::PieceStock stock) {
    using S = core::PieceStock;
    switch (stock) {
    case S::board:
        return tr("board");
    case S::endpaper:
        return tr("endpaper");
    case S::repairPaper:
        return tr("repair paper");
    case S::lining:
        return tr("lining paper");
    case S::cloth:
        return tr("cloth");
    case S::leather:
        return tr("leather");
    case S::boxCard:
        return tr("box card");
    case S::wrapperPaper:
        return tr("wrapper paper");
    }
    return {};
}

bool mayBeCutFrom(core::PieceStock stock, core::MaterialClass kind) {
    using S = core::PieceStock;
    using C = core::MaterialClass;
    switch (stock) {
    case S::board:
    case S::boxCard:
        return kind == C::board;
    case S::endpaper:
    case S::wrapperPaper:
        return kind == C::paper;
    case S::repairPaper:
    case S::lining:
        return kind == C::paper || kind == C::tissue;
    case S::cloth:
        return kind == C::cloth || kind == C::paper;
    case S::leather:
        return kind == C::leather || kind == C::vellum;
    }
    return false;
}

QStringList workNames() {
    return {tr("endpapers: single fold, tipped on"),
            tr("endpapers: sewn fold"),
            tr("endpapers: zigzag"),
            tr("endpapers: made"),
            tr("endpapers: cloth joints"),
            tr("endpapers: leather joints"),
            tr("endpapers: guarded"),
            tr("endpapers: wrapped round the gathering"),
            tr("a case: boards, spine piece, cover"),
            tr("spine linings"),
            tr("guards"),
            tr("hinges"),
            tr("a wrapper"),
            tr("a four-flap box"),
            tr("a drop-spine box"),
            tr("leather for a reback"),
            tr("leather for a quarter binding"),
            tr("leather for a half binding"),
            tr("leather for a full binding")};
}

bool asksCount(Work work) {
    return work == Work::guards || work == Work::hinges || work == Work::spineLinings;
}

bool isOverCovers(Work work) {
    return work == Work::wrapper || work == Work::fourFlapBox || work == Work::dropSpineBox;
}

bool isInsteadOf(Work one, Work other) {
    const auto areBoth = [&](Work first, Work last) {
        return one >= first && one <= last && other >= first && other <= last;
    };
    return one == other || areBoth(Work::tippedFold, Work::wrappedRound) ||
           areBoth(Work::fourFlapBox, Work::dropSpineBox) ||
           areBoth(Work::reback, Work::fullLeather);
}

std::vector<core::WorkPiece> piecesOf(Work work, const core::MeasuredBook& book,
                                      const core::StripsWanted& strips,
                                      const core::WorkHouseValues& house) {
    if (work <= Work::wrappedRound) {
        return core::endpaperPieces(static_cast<core::EndpaperKind>(work), book, house);
    }
    switch (work) {
    case Work::casing:
        return core::casePieces(book, house);
    case Work::spineLinings:
        return core::spineLinings(book, strips.count, house);
    case Work::guards:
        return core::guardStrips({strips}, house);
    case Work::hinges:
        return core::hingeStrips({strips}, house);
    case Work::wrapper:
        return core::wrapperPieces(book, house);
    case Work::fourFlapBox:
        return core::fourFlapPieces(book, house);
    case Work::dropSpineBox:
        return core::dropSpineBoxPieces(book, house);
    case Work::reback:
        return core::leatherPieces(core::LeatherKind::reback, book, house);
    case Work::quarterLeather:
        return core::leatherPieces(core::LeatherKind::quarter, book, house);
    case Work::halfLeather:
        return core::leatherPieces(core::LeatherKind::half, book, house);
    case Work::fullLeather:
        return core::leatherPieces(core::LeatherKind::full, book, house);
    default:
        return {};
    }
}

} // namespace headcap::app
