#include "app/stock/label_words.h"

#include <QCoreApplication>

#include "app/drawing/cutting_drawing.h"
#include "app/drawing/sheet_painter.h"
#include "app/session/words.h"
#include "core/custody/hazard_evidence.h"
#include "core/custody/hazards.h"
#include "core/materials/shelf_life.h"
#include "core/values/english.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("LabelChooser", text);
}

// Along which side, as one looks for it in the drawer.
QString grainWords(const core::Lot& lot) {
    switch (lot.grain) {
    case core::Grain::alongWidth:
        return tr("grain along %1").arg(mmWords(*lot.sheetWidth));
    case core::Grain::alongHeight:
        return tr("grain along %1").arg(mmWords(*lot.sheetHeight));
    case core::Grain::none:
        break;
    }
    return tr("no grain");
}

} // namespace

print::LabelWords labelOf(const core::Lot& lot, const core::Material* kind, const QString& mixer) {
    print::LabelWords label{.number = fromCore(lot.number),
                            .title = kind == nullptr ? fromCore(lot.product) : fromCore(kind->name),
                            .caution = kind == nullptr ? QString{} : fromCore(kind->caution)};
    const auto add = [&](const QString& line) {
        if (!line.isEmpty()) {
            label.lines << line;
        }
    };
    if (const auto until = core::goodUntilOf(lot, kind)) {
        add(tr("good until %1").arg(fromCore(core::dayText(*until))));
    }
    add(lot.strength ? fromCore(core::toText(*lot.strength)) : QString{});
    if (lot.mixedOn) {
        const QString on = fromCore(core::dayText(*lot.mixedOn));
        add(mixer.isEmpty() ? tr("mixed %1").arg(on) : tr("mixed %1 by %2").arg(on, mixer));
    }
    if (lot.sheetWidth && lot.sheetHeight) {
        add(tr("%1 mm, %2").arg(sizeWords(*lot.sheetWidth, *lot.sheetHeight), grainWords(lot)));
    }
    add(fromCore(lot.savedFrom.empty() ? lot.supplier
                                       : toCore(tr("from %1").arg(fromCore(lot.savedFrom)))));
    add(fromCore(lot.keptAt));
    return label;
}

void addJob(print::LabelWords& label, const core::JobFile& file) {
    QStringList hazards;
    for (const core::Hazard& hazard : file.hazards) {
        if (core::stillWarns(hazard)) {
            hazards << tr("%1: %2").arg(fromCore(core::hazardName(hazard.term)),
                                        fromCore(core::standingOf(hazard)));
        }
    }
    label.caution = hazards.join(QStringLiteral("; "));
    if (file.job.dueOn) {
        label.lines << tr("due %1").arg(fromCore(core::dayText(*file.job.dueOn)));
    }
    std::int64_t pieces = 0;
    for (const core::Piece& piece : file.pieces) {
        pieces += piece.count;
    }
    if (pieces > 0) {
        label.lines << counted(static_cast<int>(pieces), tr("%1 piece came with it"),
                               tr("%1 pieces came with it"));
    }
}

} // namespace headcap::app
