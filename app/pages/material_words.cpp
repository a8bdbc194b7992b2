#include "app/pages/material_words.h"

#include <algorithm>

#include <QCoreApplication>

#include "app/drawing/cutting_drawing.h"
#include "app/pages/bench/step_words.h"
#include "app/session/words.h"
#include "core/materials/job_materials.h"
#include "core/report/lot_origin.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("job_materials", text);
}

// How the lot now stands: what is left of it, and whether it is still fit.
TableCell standingOf(const core::JobMaterial& material, core::Day today) {
    if (material.lot == nullptr) {
        return {tr("no lot"), Face::smallStrong, Ink::must};
    }
    QStringList said;
    Ink ink = Ink::quiet;
    if (material.balance && material.balance->count < 0) {
        said << tr("overdrawn by %1").arg(fromCore(core::toText(material.balance->negated())));
        ink = Ink::must;
    } else if (material.balance) {
        said << (material.lot->finished && material.balance->count == 0
                     ? tr("used up")
                     : tr("%1 left").arg(fromCore(core::toText(*material.balance))));
    } else {
        said << tr("its ledger does not add up");
        ink = Ink::must;
    }
    if (material.ageNow == core::LotAge::overdue) {
        said << tr("past its date, %1").arg(shortDay(*material.goodUntil, today));
        ink = ink == Ink::must ? ink : Ink::open;
    } else if (material.ageNow == core::LotAge::nearDate) {
        said << tr("good until %1").arg(shortDay(*material.goodUntil, today));
    }
    return {dotted(said), ink == Ink::quiet ? Face::small : Face::smallStrong, ink};
}

TableRow headingOf(const core::JobFile& file, const core::JobMaterial& material, core::Day today) {
    QString title = fromCore(material.name);
    if (title.isEmpty()) {
        title = tr("a material not named");
    }
    QStringList below;
    if (material.lot != nullptr) {
        below << fromCore(core::report::originText(file, *material.lot));
        below << (material.kind != nullptr ? fromCore(material.kind->composition) : QString{});
    }
    return {.title = {title, Face::heading, Ink::ink},
            .right = standingOf(material, today),
            .below = {dotted(below)}};
}

TableRow rowOf(const core::JobFile& file, const core::MaterialInStep& one,
               const core::Clock& clock) {
    const core::MaterialUse& use = *one.use;
    QStringList below{fromCore(use.role)};
    if (!use.stays) {
        below << tr("nothing of it stays");
    }
    Ink ink = Ink::quiet;
    if (one.ageThen == core::LotAge::overdue) {
        below << (use.overrideReason.empty()
                      ? tr("past its date when it was used: why?")
                      : tr("past its date, used because %1").arg(fromCore(use.overrideReason)));
        ink = use.overrideReason.empty() ? Ink::open : Ink::quiet;
    } else if (!use.overrideReason.empty()) {
        below << tr("used because %1").arg(fromCore(use.overrideReason));
    }
    TableCell removal{fromCore(one.removal)};
    if (!use.stays) {
        removal = {QStringLiteral("—")};
    } else if (one.removal.empty()) {
        removal = {tr("how does it come off?"), Face::smallStrong, Ink::must};
    }
    const bool isNoted = use.amount.has_value();
    return {.id = use.id.uuid(),
            .title = {titleOf(file, *one.step), Face::body, Ink::ink},
            .mark = shortDay(clock.dayOf(one.step->at), clock.today()),
            .middle = {{fromCore(one.place), Face::formula, Ink::ink}, removal},
            .right = {isNoted ? fromCore(core::toText(*use.amount)) : tr("no amount"), Face::small,
                      isNoted ? Ink::ink : Ink::open},
            .below = {dotted(below), Face::small, ink}};
}

TableRow rowOf(const core::MaterialInFacsimile& one) {
    const core::Facsimile& leaf = *one.leaf;
    const QString how = one.isPrintedOn && one.isAttachedWith ? tr("printed on it, held by it")
                        : one.isPrintedOn                     ? tr("printed on it")
                                                              : tr("held by it");
    const bool isSaid = !leaf.removal.empty();
    return {.id = leaf.id.uuid(),
            .title = {tr("Facsimile"), Face::body, Ink::ink},
            .middle = {{fromCore(leaf.place), Face::formula, Ink::ink},
                       isSaid
                           ? TableCell{fromCore(leaf.removal)}
                           : TableCell{tr("how does it come out?"), Face::smallStrong, Ink::must}},
            .below = {dotted({how, fromCore(one.isPrintedOn ? leaf.printing : leaf.attachment)})}};
}

} // namespace

std::vector<TableRow> materialRows(const core::JobFile& file, const core::Clock& clock) {
    std::vector<TableRow> rows;
    for (const core::JobMaterial& material : core::jobMaterials(file, clock)) {
        rows.push_back(headingOf(file, material, clock.today()));
        for (const core::MaterialInStep& one : material.uses) {
            rows.push_back(rowOf(file, one, clock));
        }
        for (const core::MaterialInFacsimile& one : material.facsimiles) {
            rows.push_back(rowOf(one));
        }
    }
    return rows;
}

std::vector<TableRow> pieceRows(const core::JobFile& file, const std::vector<core::CutPart>& pieces,
                                const core::Clock& clock) {
    std::vector<TableRow> rows;
    std::vector<std::pair<core::CutPart, int>> alike;
    for (const core::CutPart& piece : pieces) {
        const auto same = std::ranges::find_if(alike, [&](const auto& one) {
            return one.first.cutting == piece.cutting && one.first.sheet == piece.sheet &&
                   one.first.name == piece.name && one.first.width == piece.width &&
                   one.first.height == piece.height;
        });
        if (same == alike.end()) {
            alike.emplace_back(piece, 1);
        } else {
            ++same->second;
        }
    }
    if (!alike.empty()) {
        rows.push_back({.title = {tr("Cut for it"), Face::heading, Ink::ink}});
    }
    for (const auto& [piece, count] : alike) {
        const auto cutting = std::ranges::find(file.cuttings, piece.cutting, &core::Cutting::id);
        const core::Lot* lot = file.lot(piece.sheet);
        rows.push_back(
            {.id = piece.id.uuid(),
             .title = {fromCore(piece.name), Face::body, Ink::ink},
             .mark = cutting == file.cuttings.end()
                         ? QString{}
                         : shortDay(clock.dayOf(cutting->at), clock.today()),
             .middle = {{piece.width && piece.height
                             ? tr("%1 mm").arg(sizeWords(*piece.width, *piece.height))
                             : QString{}},
                        {lot == nullptr ? QString{} : tr("from %1").arg(fromCore(lot->number))}},
             .right = {tr("%1 of it").arg(count), Face::small, Ink::ink}});
    }
    return rows;
}

std::optional<core::Uuid> materialRow(const core::JobFile& file, const core::Clock& clock,
                                      const core::RecordRef& ref) {
    for (const core::JobMaterial& material : core::jobMaterials(file, clock)) {
        const bool isIt = (material.lot != nullptr && core::refOf(material.lot->id) == ref) ||
                          (material.kind != nullptr && core::refOf(material.kind->id) == ref);
        for (const core::MaterialInStep& one : material.uses) {
            if (isIt || core::refOf(one.use->id) == ref) {
                return one.use->id.uuid();
            }
        }
        for (const core::MaterialInFacsimile& one : material.facsimiles) {
            if (isIt || core::refOf(one.leaf->id) == ref) {
                return one.leaf->id.uuid();
            }
        }
    }
    return std::nullopt;
}

} // namespace headcap::app
