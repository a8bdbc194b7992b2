#include "core/report/materials_sheet.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/materials/job_cost.h"
#include "core/materials/job_materials.h"
#include "core/materials/lot_cost.h"
#include "core/report/letterhead.h"
#include "core/report/lot_origin.h"
#include "core/report/writing.h"
#include "core/treatment/bench_log.h"
#include "core/values/english.h"
#include "core/values/measure_text.h"
#include "core/values/month_names.h"

namespace headcap::core {
namespace {

using namespace report;

// "29 Sep 2026": whole in a narrow column.
std::string shortDayText(Day day) {
    return fmt::format("{}\u00a0{}\u00a0{}", unsigned{day.day()},
                       kMonthNames[unsigned{day.month()} - 1].substr(0, 3),
                       static_cast<int>(day.year()));
}

std::string costText(const Shelf& shelf, const JobMaterial& material, const MaterialUse& use) {
    const auto cost = material.lot != nullptr && use.amount
                          ? costOf(*material.lot, *use.amount, shelf)
                          : std::nullopt;
    return cost ? toText(*cost) : "not known";
}

// What the last column adds up to, where all of it is known.
void addSpent(Table& table, const JobFile& file) {
    const JobCost cost = jobCost(file);
    if (cost.unknown > 0) {
        return;
    }
    for (const Money& spent : cost.spent) {
        TableRow all = row({"In all", "", "", "", ""});
        all.cells.back() = bold(toText(spent));
        all.kind = TableRow::Kind::total;
        table.rows.push_back(std::move(all));
    }
}

// One table of all lots, each with its uses under it and what of it went in all.
Section usesOf(const JobFile& file, const Clock& clock) {
    Section section{.key = "materials", .title = "Materials used"};
    Table table{.columns = {{"Day", 2},
                            {"Step and place", 6},
                            {"How it comes off", 7},
                            {"Amount", 3, true},
                            {"Cost", 2, true}}};
    const Shelf shelf = shelfOf(file);
    for (const JobMaterial& material : jobMaterials(file, clock)) {
        const std::string name = material.name.empty() ? "Not named" : material.name;
        table.rows.push_back(
            group(name, material.lot == nullptr ? "" : originText(file, *material.lot), {},
                  material.lot == nullptr ? std::nullopt : std::optional{refOf(material.lot->id)}));
        for (const MaterialInStep& one : material.uses) {
            std::string step = stepTitle(*one.step, file.techniques);
            if (!one.use->overrideReason.empty()) {
                step += "; used all the same: " + one.use->overrideReason;
            }
            table.rows.push_back(row({shortDayText(clock.dayOf(one.step->at)), step,
                                      one.use->stays ? orNot(one.removal) : std::string{kNotLeft},
                                      one.use->amount ? amountText(file, *one.use) : "not noted",
                                      costText(shelf, material, *one.use)},
                                     refOf(one.use->id)));
        }
        for (const MaterialInFacsimile& one : material.facsimiles) {
            table.rows.push_back(
                row({"", "Facsimile " + placeIn(file, one.leaf->part, one.leaf->place),
                     orNot(one.leaf->removal), "", ""},
                    refOf(one.leaf->id)));
        }
    }
    addSpent(table, file);
    addOr(section, std::move(table), "Nothing was put into the book.");
    return section;
}

Section piecesOf(const JobFile& file, const std::vector<CutPart>& cutParts, const Clock& clock) {
    Section section{.key = "pieces", .title = "Pieces cut"};
    Table table{.columns = {{"Day", 2}, {"Piece", 4}, {"Size", 3}, {"From lot", 4}}};
    for (const CutPart& part : cutParts) {
        const auto cutting = std::ranges::find(file.cuttings, part.cutting, &Cutting::id);
        if (part.kind != CutPartKind::piece || cutting == file.cuttings.end() ||
            cutting->takenBackAt) {
            continue;
        }
        const std::string size = part.width && part.height
                                     ? toText(*part.width) + " by " + toText(*part.height)
                                     : std::string{};
        table.rows.push_back(
            row({dayText(clock.dayOf(cutting->at)), part.name, size, lotText(file, part.sheet)},
                refOf(part.id)));
    }
    addOr(section, std::move(table), "No piece was cut for it.");
    return section;
}

Section sumOf(const JobFile& file) {
    Section section{.key = "cost", .title = "Cost"};
    section.blocks.push_back(Statement{sentenceOf(jobCost(file))});
    return section;
}

} // namespace

Document materialsSheet(const JobFile& file, const std::vector<CutPart>& cutParts,
                        const Clock& clock) {
    Document document{.title = "Materials",
                      .subtitle = headingOf(file.item),
                      .jobNumber = file.job.number,
                      .date = clock.today(),
                      .isDraft = false};
    document.letterhead = letterheadOf(file);
    document.sections = {usesOf(file, clock), piecesOf(file, cutParts, clock), sumOf(file)};
    return document;
}

} // namespace headcap::core
