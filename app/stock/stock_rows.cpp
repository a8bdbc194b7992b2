#include "app/stock/stock_rows.h"

#include <QCoreApplication>

#include "app/session/words.h"
#include "core/materials/material_kinds.h"
#include "core/materials/trace.h"
#include "core/treatment/bench_log.h"
#include "core/values/amount_words.h"

namespace headcap::app {
namespace {

QString leftWords(const core::StockLine& line) {
    return fromCore(core::aboutWords(line.balance, core::pieceName(line.kind->kind)));
}

constexpr int kSoonDays = 60;

QString tr(const char* text) {
    return QCoreApplication::translate("stock", text);
}

TableCell standing(core::LotAge age, const std::optional<core::Day>& until, core::Day today) {
    if (!until) {
        return {};
    }
    if (age == core::LotAge::overdue) {
        return {tr("past its date, %1").arg(shortDay(*until, today)), Face::smallStrong, Ink::open};
    }
    return {tr("good until %1").arg(shortDay(*until, today)), Face::small,
            age == core::LotAge::nearDate ? Ink::open : Ink::quiet};
}

} // namespace

std::vector<TableRow> stockRows(const core::Shelf& shelf, core::Day day, const core::Clock& clock) {
    std::vector<TableRow> rows;
    std::optional<core::MaterialClass> kind;
    for (const core::StockLine& line : core::stockOn(shelf, day, clock)) {
        if (kind != line.kind->kind) {
            kind = line.kind->kind;
            QString name = words(*kind);
            name.front() = name.front().toUpper();
            rows.push_back({.title = {name, Face::heading, Ink::ink}});
        }
        rows.push_back(
            {.id = line.lot->id.uuid(),
             .title = {fromCore(line.kind->name), Face::body, Ink::ink},
             .mark = fromCore(line.lot->number),
             .middle = {{fromCore(line.lot->keptAt)}, standing(line.age, line.goodUntil, day)},
             .right = {leftWords(line), Face::small,
                       line.balance.count < 0 ? Ink::must : Ink::ink}});
    }
    return rows;
}

std::vector<TableRow> endingRows(const core::Shelf& shelf, core::Day today,
                                 const core::Clock& clock, core::IdSource& keys) {
    std::vector<TableRow> rows;
    const auto off = core::goingOff(shelf, today, kSoonDays, clock);
    for (const core::StockLine& line : off) {
        rows.push_back({.id = line.lot->id.uuid(),
                        .title = {fromCore(line.kind->name), Face::body, Ink::ink},
                        .mark = fromCore(line.lot->number),
                        .middle = {{}, standing(line.age, line.goodUntil, today)},
                        .right = {leftWords(line), Face::small, Ink::ink}});
    }
    const auto out = core::runningOut(shelf, today, kSoonDays, clock);
    for (const core::RunningOut& one : out) {
        rows.push_back(
            {.id = keys.nextUuid(),
             .title = {fromCore(one.kind->name), Face::body, Ink::ink},
             .middle = {{},
                        {one.left.count == 0 ? tr("nothing left")
                                             : counted(one.days, tr("lasts about %1 day"),
                                                       tr("lasts about %1 days")),
                         Face::smallStrong, Ink::open}},
             .right = {fromCore(core::toText(one.left)), Face::small, Ink::ink},
             .below = {tr("%1 in the last year").arg(fromCore(core::toText(one.usedInAYear)))}});
    }
    return rows;
}

std::vector<TableRow> useRows(const core::Shelf& shelf, const core::Clock& clock,
                              core::IdSource& keys) {
    std::vector<TableRow> rows;
    for (const core::YearsUse& use : core::useByYear(shelf, clock)) {
        QStringList years;
        for (const auto& [year, amount] : use.byYear) {
            years << tr("%1: %2").arg(year).arg(fromCore(core::toText(amount)));
        }
        rows.push_back({.id = keys.nextUuid(),
                        .title = {fromCore(use.kind->name), Face::body, Ink::ink},
                        .middle = {{dotted(years)}},
                        .right = {words(use.kind->kind)}});
    }
    return rows;
}

std::vector<TableRow> savedRows(const core::Shelf& shelf, const core::RecordStore& records) {
    std::vector<TableRow> rows;
    for (const core::Lot& lot : shelf.lots) {
        if (lot.origin != core::LotOrigin::saved) {
            continue;
        }
        const core::Whereabouts all = core::loadWhereabouts(records, lot.id);
        const auto trace = core::traceLot(all, lot.id);
        QStringList places;
        for (const core::TracedJob& job : trace ? trace->jobs : std::vector<core::TracedJob>{}) {
            for (const core::TracedUse& one : job.uses) {
                places << tr("%1, %2").arg(fromCore(job.job->number),
                                           fromCore(core::stepTitle(*one.step, all.techniques)));
            }
            for (const core::TracedLeaf& one : job.leaves) {
                places << tr("%1, facsimile %2")
                              .arg(fromCore(job.job->number), fromCore(one.leaf->place));
            }
        }
        const auto balance = shelf.balanceOf(lot.id);
        rows.push_back({.id = lot.id.uuid(),
                        .title = {fromCore(lot.savedFrom), Face::formula, Ink::ink},
                        .mark = fromCore(lot.number),
                        .middle = {{places.isEmpty() ? tr("in no book yet")
                                                     : places.join(QStringLiteral("; "))}},
                        .right = {balance ? fromCore(core::toText(*balance)) : QString{},
                                  Face::small, Ink::ink},
                        .below = {fromCore(lot.whyFree)}});
    }
    return rows;
}

} // namespace headcap::app
