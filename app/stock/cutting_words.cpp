#include "app/stock/cutting_words.h"

#include <QCoreApplication>

#include "app/drawing/cutting_drawing.h"
#include "app/look/fonts.h"
#include "app/session/words.h"
#include "core/materials/cut_grain.h"
#include "core/materials/fitness.h"
#include "core/values/decimal.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("cutting", text);
}

// In cm², as offcuts are thought of.
QString areaWords(core::Area area) {
    return tr("%1 cm²").arg(fromCore(core::decimalText(area.count() / 100'000'000, 0)));
}

QString grainWords(core::GrainWay grain) {
    switch (grain) {
    case core::GrainWay::alongWidth:
        return tr("grain along its width");
    case core::GrainWay::alongHeight:
        return tr("grain along its height");
    case core::GrainWay::none:
        break;
    }
    return tr("no grain");
}

} // namespace

RowWords sheetWords(const core::Shelf& shelf, const core::SheetOfLot& sheet, bool isSpared,
                    core::Day today) {
    const core::Lot& lot = *shelf.lot(sheet.lot);
    const core::Material& kind = *shelf.material(lot.material);
    QStringList detail{grainWords(sheet.sheet.grain)};
    if (lot.origin == core::LotOrigin::offcut) {
        detail << tr("offcut");
    }
    if (sheet.sheet.isKeptBack) {
        detail << tr("kept back: only where nothing else will do");
    }
    bool isUnfit = false;
    for (const core::FitnessPoint& point : core::fitnessOf(lot, kind, {.on = today})) {
        detail << fromCore(point.sentence);
        isUnfit = isUnfit || point.asksReason;
    }
    return {.mark = fromCore(lot.number),
            .title = tr("%1 of %2 mm")
                         .arg(counted(sheet.sheet.count, tr("%1 sheet"), tr("%1 sheets")),
                              sizeWords(sheet.sheet.width, sheet.sheet.height)),
            .detail = dotted(detail),
            .right = isSpared ? tr("left alone") : tr("may be cut"),
            .rightInk = isUnfit    ? Ink::open
                        : isSpared ? Ink::quiet
                                   : Ink::settled};
}

QString standingWords(const core::CutProblem& problem, const core::CutPlan& plan) {
    QStringList said;
    for (const core::LeftOutPiece& left : plan.leftOut) {
        const QString name = fromCore(problem.pieces[left.piece].id);
        said << (left.reason == core::LeftOutReason::fitsNoSheet
                     ? tr("%1 × %2 fits no sheet: it is too large, or its grain forbids it.")
                           .arg(left.count)
                           .arg(name)
                     : tr("There is no room for %1 × %2.").arg(left.count).arg(name));
    }
    if (plan.placed.empty()) {
        return said.join(QLatin1Char(' '));
    }
    const auto sheets = static_cast<int>(sheetsCut(plan).size());
    said << tr("%1 from %2; %3 back to stock, %4 waste.")
                .arg(counted(static_cast<int>(plan.placed.size()), tr("%1 piece"), tr("%1 pieces")),
                     counted(sheets, tr("%1 sheet"), tr("%1 sheets")),
                     counted(static_cast<int>(plan.offcuts.size()), tr("%1 offcut"),
                             tr("%1 offcuts")),
                     areaWords(plan.waste));
    if (plan.isProvedBest) {
        said << tr("No plan does with less.");
    }
    return said.join(QLatin1Char(' '));
}

QString grainAgainst(const core::CutProblem& problem, const core::CutPlan& plan) {
    QStringList names;
    for (const std::size_t piece : core::piecesAcrossSpine(problem, plan)) {
        names << fromCore(problem.pieces[piece].id);
    }
    return names.isEmpty() ? QString{}
                           : tr("The grain would lie across the spine in: %1")
                                 .arg(names.join(QStringLiteral(", ")));
}

QString sentenceFor(const core::CutProblemError& error, const core::CutProblem& problem) {
    using F = core::CutProblemFault;
    const QString which =
        error.place == core::CutProblemPlace::piece
            ? tr("The piece “%1”").arg(fromCore(problem.pieces[error.index].id))
        : error.place == core::CutProblemPlace::sheet
            ? tr("The sheet of lot %1").arg(fromCore(problem.sheets[error.index].id))
            : tr("The plan");
    switch (error.fault) {
    case F::noSheets:
        return tr("There is no sheet that may be cut.");
    case F::noPieces:
        return tr("Say what is wanted first.");
    case F::tooManyRows:
    case F::tooManySheets:
        return tr("That is more than can be planned at once.");
    case F::tooManyPieces:
        return tr("Those are more than %1 pieces: plan them in parts.")
            .arg(core::kMostPiecesToPlace);
    case F::notPositive:
        return tr("%1 has a side or a number of nothing.").arg(which);
    case F::tooLarge:
        return tr("%1 is larger than anything that is cut at a bench.").arg(which);
    case F::negative:
        return tr("%1 has a measure below nothing.").arg(which);
    case F::trimmedAway:
        return tr("%1 is all trimmed away: look at the house value for the trim.").arg(which);
    }
    return {};
}

QString sentenceFor(core::CuttingFault fault) {
    using F = core::CuttingFault;
    switch (fault) {
    case F::nothingCut:
        return tr("Nothing would be cut.");
    case F::planUnsound:
        return tr("The plan does not stand its check, and was not booked; plan it again.");
    case F::lotUnknown:
        return tr("A lot of the plan is no longer on the shelf; plan it again.");
    case F::sheetDiffers:
        return tr("A lot's sheets are no longer of the size that was planned with; plan it again.");
    case F::tooFewSheets:
        return tr("There are no longer so many sheets; plan it again.");
    case F::numbersUsedUp:
        return tr("No number is left for an offcut this year.");
    }
    return {};
}

} // namespace headcap::app
