// Where a lot went: every job, step and mixed lot, and whom to tell.
#include <nlohmann/json.hpp>

#include "app/cli/commands.h"
#include "core/materials/material_kinds.h"
#include "core/materials/shelf.h"
#include "core/materials/trace_json.h"
#include "core/treatment/bench_log.h"
#include "core/values/amount_words.h"
#include "core/values/english.h"
#include "core/values/measure_text.h"

namespace headcap::app::cli {
namespace {

core::Id<core::Lot> lotNumbered(const core::RecordStore& records, const std::string& number) {
    for (const auto& lot : core::typed<core::Lot>(
             records.allWith(core::RecordKind::lot, "number", core::ColumnValue{number}))) {
        return lot.record.id;
    }
    const core::Shelf shelf{.lots = core::loadShelf(records).lots};
    const core::Lot* lot = shelf.numbered(number);
    if (lot == nullptr) {
        throw Failure{Exit::inputUnusable, "there is no lot " + number + " in this workshop."};
    }
    return lot->id;
}

std::string nameOf(const core::Whereabouts& all, const core::Lot& lot) {
    const core::Shelf shelf{.materials = all.materials};
    return core::lotName(lot, shelf.material(lot.material));
}

std::string throughWords(const core::LotTrace& trace, const core::Lot& used) {
    std::string words;
    for (const core::Lot* lot : trace.through(used)) {
        words += (words.empty() ? "  through " : ", ") + lot->number;
    }
    return words;
}

// "  half a sheet", as the material is counted.
std::string amountOf(const core::Whereabouts& all, const core::TracedUse& one) {
    const core::Shelf shelf{.materials = all.materials};
    const core::Material* kind = shelf.material(one.lot->material);
    return !one.use->amount ? ""
           : kind == nullptr
               ? "  " + core::toText(*one.use->amount)
               : "  " + core::amountWords(*one.use->amount, core::pieceName(kind->kind));
}

void printJob(const core::Whereabouts& all, const core::LotTrace& trace, const core::TracedJob& job,
              const core::Clock& clock) {
    std::string head = job.job->number;
    head += job.item == nullptr ? "" : "  " + core::headingOf(*job.item);
    head += job.owner == nullptr ? "" : "  for " + job.owner->name;
    head += job.ownerNow == nullptr ? "" : ", now of " + job.ownerNow->name;
    printLine(head);
    for (const core::TracedUse& one : job.uses) {
        printLine("    " + core::dayText(clock.dayOf(one.step->at)) + "  " +
                  core::stepTitle(*one.step, trace.techniques) + amountOf(all, one) +
                  throughWords(trace, *one.lot) + (one.use->stays ? "" : "  not left in the book"));
    }
    for (const core::TracedLeaf& one : job.leaves) {
        printLine("    facsimile " + one.leaf->place +
                  (one.isPrintedOn ? ", printed on it" : ", held by it") +
                  throughWords(trace, *one.lot));
    }
}

void printPieces(const core::LotTrace& trace, const core::TracedJob& job,
                 const core::Clock& clock) {
    for (const core::TracedPiece& one : job.pieces) {
        printLine(
            "    " + core::dayText(clock.dayOf(one.cutting->at)) + "  cut: " + one.piece->name +
            (one.piece->width && one.piece->height ? ", " + core::toText(*one.piece->width) +
                                                         " by " + core::toText(*one.piece->height)
                                                   : "") +
            throughWords(trace, *one.lot));
    }
}

void print(const core::Whereabouts& all, const core::LotTrace& trace, const core::Clock& clock) {
    printLine(nameOf(all, *trace.lot));
    for (const core::Lot* lot : trace.lots) {
        printLine("  went into  " + nameOf(all, *lot));
    }
    for (const core::TracedJob& job : trace.jobs) {
        printJob(all, trace, job, clock);
        printPieces(trace, job, clock);
    }
    if (trace.jobs.empty()) {
        printLine("It went into no book.");
    }
}

Exit run(const Call& call) {
    const auto workshop = call.openWorkshop();
    const core::RecordStore& records = workshop->stores().records;
    const auto lot = lotNumbered(records, call.words().front().toStdString());
    const core::Whereabouts all = core::loadWhereabouts(records, lot);
    const auto trace = core::traceLot(all, lot);
    if (!trace) {
        throw Failure{Exit::workshopUnusable, "the lot went while it was looked for; try again."};
    }
    if (call.wantsJson()) {
        printLine(core::traceJson(*trace).dump());
    } else {
        print(all, *trace, call.surroundings().clock);
    }
    return Exit::done;
}

} // namespace

Command traceCommand() {
    return {.name = QStringLiteral("trace"),
            .words = QStringLiteral("LOT"),
            .purpose = QStringLiteral("every job, step and mixed lot that a lot went into"),
            .fewest = 1,
            .most = 1,
            .options = {},
            .run = run};
}

} // namespace headcap::app::cli
