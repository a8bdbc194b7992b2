#include "core/report/materials_sheet.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/materials/job_cost.h"
#include "core/materials/job_materials.h"
#include "core/materials/lot_cost.h"
#include "core/report/lot_origin.h"
#include "core/report/writing.h"
#include "core/treatment/bench_log.h"
#include "core/values/english.h"
#include "core/values/measure_text.h"

namespace headcap::core {
namespace {

using namespace report;

std::string costText(const JobFile& file, const JobMaterial& material, const MaterialUse& use) {
    const auto cost = material.lot != nullptr && use.amount
                          ? costOf(*material.lot, *use.amount, shelfOf(file))
                          : std::nullopt;
    return cost ? toText(*cost) : "not known";
}

Section usesOf(const JobFile& file, const Clock& clock) {
    Section section{.key = "materials", .title = "Materials used"};
    for (const JobMaterial& material : jobMaterials(file, clock)) {
        section.blocks.push_back(Subheading{material.name.empty() ? "Not named" : material.name});
        if (material.lot != nullptr) {
            section.blocks.push_back(
                Paragraph{plain(originText(file, *material.lot)), refOf(material.lot->id)});
        }
        Table table{.columns = {{"Day", 2},
                                {"Step and place", 5},
                                {"Comes off by", 4},
                                {"Amount", 2, true},
                                {"Cost", 2, true}}};
        for (const MaterialInStep& one : material.uses) {
            std::string step = stepTitle(*one.step, file.techniques);
            if (!one.use->overrideReason.empty()) {
                step += "; used all the same: " + one.use->overrideReason;
            }
            table.rows.push_back(row({dayText(clock.dayOf(one.step->at)), step,
                                      one.use->stays ? one.removal : "nothing of it stays",
                                      one.use->amount ? toText(*one.use->amount) : "not noted",
                                      costText(file, material, *one.use)},
                                     refOf(one.use->id)));
        }
        for (const MaterialInFacsimile& one : material.facsimiles) {
            table.rows.push_back(
                row({"", "Facsimile " + one.leaf->place, one.leaf->removal, "", ""},
                    refOf(one.leaf->id)));
        }
        if (!table.rows.empty()) {
            section.blocks.push_back(std::move(table));
        }
    }
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
    if (file.workshop) {
        document.author = file.workshop->name;
        document.letterhead.name = file.workshop->name;
    }
    document.sections = {usesOf(file, clock), piecesOf(file, cutParts, clock), sumOf(file)};
    return document;
}

} // namespace headcap::core
