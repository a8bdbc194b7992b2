#include <algorithm>

#include <fmt/format.h>

#include "core/materials/cut_for_job.h"
#include "core/materials/material_kinds.h"
#include "core/report/labels.h"
#include "core/report/lot_origin.h"
#include "core/report/repair_steps.h"
#include "core/report/sections.h"
#include "core/report/trade_words.h"
#include "core/report/writing.h"
#include "core/treatment/bench_log.h"
#include "core/values/english.h"

namespace headcap::core::report {
namespace {

Facts leafFacts(const Context& at, const Facsimile& leaf) {
    const JobFile& file = at.file;
    const RecordRef source = refOf(leaf.id);
    const bool printed = leaf.kind == SuppliedKind::facsimile;
    Facts facts;
    addFact(facts, labels::kLeaf, orNot(placeIn(file, leaf.part, leaf.place)), source);
    const std::string from = joined({leaf.institution, leaf.shelfmark}, ", ");
    addFact(facts, labels::kTakenFrom, printed ? orNot(from) : from, source);
    const std::string edition =
        joined({leaf.edition, leaf.sourceDate ? toText(*leaf.sourceDate) : ""}, ", ");
    addFact(facts, labels::kEdition, capitalised(printed ? orNot(edition) : edition), source);
    addFact(
        facts, labels::kImages,
        joined({leaf.address, leaf.consultedOn ? "consulted on " + dayText(*leaf.consultedOn) : ""},
               ", "),
        source);
    addFact(facts, labels::kPermission, leaf.permission, source);
    addFact(facts, labels::kProvenance, printed ? leaf.provenance : orNot(leaf.provenance), source);
    addFact(facts, labels::kAgreement,
            told({std::string{wordsFor(leaf.verdict)}, leaf.verification.empty()
                                                           ? "how it was compared is NOT RECORDED"
                                                           : leaf.verification}),
            source);
    const std::string on = lotText(file, leaf.printedOn);
    const std::string printing = joined({leaf.printing, on.empty() ? "" : "on " + on});
    addFact(facts, labels::kPrinted, printed ? orNot(printing) : printing, source);
    const std::string with = lotText(file, leaf.attachedWith);
    addFact(facts, labels::kHeldBy,
            orNot(capitalised(joined({leaf.attachment, with.empty() ? "" : "with " + with}))),
            source);
    addFact(facts, labels::kMarked, printed ? orNot(leaf.marking) : leaf.marking, source);
    addFact(facts, labels::kComesOut, orNot(sentence(leaf.removal)), source);
    const Step* step = file.step(leaf.step);
    addFact(facts, labels::kPutIn,
            step ? dayText(at.clock.dayOf(step->at)) + ", by " + personName(file, step->who) : "",
            source);
    return facts;
}

// The uses that stand, under the lot or the words of each, in the order of the first of them.
using UsesByMaterial = std::vector<std::pair<std::string, std::vector<const MaterialUse*>>>;
UsesByMaterial usesByMaterial(const JobFile& file) {
    UsesByMaterial groups;
    for (const MaterialUse& use : file.uses) {
        const Step* step = file.step(use.step);
        if (step == nullptr || step->struckAt) {
            continue;
        }
        const std::string lot = capitalised(lotText(file, use.lot));
        const std::string name = lot.empty() ? use.material : lot;
        const auto known = std::ranges::find(groups, name, &UsesByMaterial::value_type::first);
        if (name.empty() && known == groups.end()) { // under no heading, before all
            groups.insert(groups.begin(), {name, {&use}});
            continue;
        }
        auto& group = known == groups.end()
                          ? groups.emplace_back(name, std::vector<const MaterialUse*>{})
                          : *known;
        group.second.push_back(&use);
    }
    return groups;
}

// Of several uses that can be added: "92.5 g in all".
std::string amountInAll(const JobFile& file, const std::vector<const MaterialUse*>& uses) {
    std::optional<Amount> all;
    bool isWhole = true;
    for (const MaterialUse* use : uses) {
        isWhole = isWhole && use->amount;
        if (use->amount) {
            all = all ? sum(*all, *use->amount) : use->amount;
            if (!all) {
                return {};
            }
        }
    }
    if (!all || uses.size() < 2) {
        return {};
    }
    return amountText(file, *all, uses.front()->lot) +
           (isWhole ? " in all" : ", and what was not measured");
}

// The place of the step is not said twice in one row.
std::string stepName(const JobFile& file, const Step& step, const MaterialUse& use) {
    const std::string name = file.techniques.nameOf(step.technique);
    const bool isPlaceSaid = use.place.empty() || use.place == step.place;
    return name.empty() || !isPlaceSaid ? stepTitle(step, file.techniques) : name;
}

TableRow useRow(const Context& at, const MaterialUse& use) {
    const JobFile& file = at.file;
    const Step& step = *file.step(use.step);
    const bool isNamed = file.lot(use.lot) != nullptr || !use.material.empty();
    const bool isPieces = isOfCutPieces(use);
    const std::string inWords = !isNamed               ? orNot({})
                                : use.lot && !isPieces ? use.material
                                                       : std::string{};
    return row(
        {placeIn(file, step.part, use.place.empty() ? step.place : use.place),
         joined({stepName(file, step, use), dayText(at.clock.dayOf(step.at))}),
         joined({inWords, use.role, grainText(use.grainAtSpine)}, ", "),
         use.amount ? amountText(file, use)
         : isPieces ? use.material
                    : "not measured",
         told({use.stays ? orNot(use.removal.empty() ? step.undoing : use.removal)
                         : told({std::string{kNotLeft}, use.removal}),
               use.overrideReason.empty() ? "" : "used all the same: " + use.overrideReason})},
        refOf(use.id));
}

std::string kindText(const Material* kind) {
    return kind ? joined({kind->name, std::string{core::wordsFor(kind->kind)}, kind->composition,
                          kind->standard})
                : "";
}

// What was cut for the book may be in it: a reader must not take the silence of the log for a no.
void addCutAndNotUsed(Section& section, const Context& at) {
    List list;
    for (const CutForJob& cut : cutAndNotUsed(at.file)) {
        const auto cutting = std::ranges::find(at.file.cuttings, cut.cutting, &Cutting::id);
        const auto lot = std::ranges::find(at.file.lots, cut.lot, &Lot::number);
        const std::string name =
            lot == at.file.lots.end() ? cut.lot : lotText(at.file, std::optional{lot->id});
        list.items.push_back(
            {plain(fmt::format("{} of {}{}, cut on {}. No step of the log uses {}; what became of "
                               "{} is NOT RECORDED.",
                               toText(Amount::pieces(cut.pieces)), name,
                               cut.names.empty() ? "" : " (" + listed(cut.names) + ")",
                               dayText(at.clock.dayOf(cutting->at)),
                               cut.pieces == 1 ? "it" : "them", cut.pieces == 1 ? "it" : "them")),
             refOf(cut.cutting)});
    }
    if (!list.items.empty()) {
        section.blocks.emplace_back(Subheading{"Cut for this book, and not seen again"});
        section.blocks.emplace_back(std::move(list));
    }
}

} // namespace

Section suppliedLeaves(const Context& at) {
    Section section{
        .key = "disclosures_a", .title = "A. Facsimiles and leaves supplied", .level = 2};
    if (at.file.facsimiles.empty()) {
        section.blocks.emplace_back(Statement{"No leaf was supplied, in facsimile or original."});
    }
    for (const Facsimile& leaf : at.file.facsimiles) {
        const bool printed = leaf.kind == SuppliedKind::facsimile;
        section.blocks.emplace_back(
            Subheading{joined({printed ? "Facsimile" : "Original leaf from another copy",
                               placeIn(at.file, leaf.part, leaf.place)},
                              ": ")});
        section.blocks.emplace_back(leafFacts(at, leaf));
    }
    return section;
}

Section repairs(const Context& at) {
    Section section{.key = "disclosures_b", .title = "B. Repairs and parts replaced", .level = 2};
    Table table{{{"Repair", 5}, {"Where", 3}, {"With", 4}, {"How it is undone", 4}}, {}};
    for (const Step& step : at.file.steps) {
        if (!isRepair(at.file, step)) {
            continue;
        }
        std::vector<std::string> with;
        for (const MaterialUse* use : at.file.usesOf(step)) {
            with.push_back(useText(at.file, *use));
        }
        table.rows.push_back(
            row({told({at.file.techniques.nameOf(step.technique), step.description}),
                 placeIn(at.file, step.part, step.place), orNot(joined(with)),
                 told({std::string{wordsFor(step.reversibility)}, step.undoing})},
                refOf(step.id)));
    }
    addOr(section, std::move(table), "No repair was made and no part replaced.");
    return section;
}

Section materialsIntroduced(const Context& at) {
    const JobFile& file = at.file;
    Section section{.key = "disclosures_c", .title = "C. Materials introduced", .level = 2};
    Table uses{{{"Where", 3},
                {"In which step", 4},
                {"As", 3},
                {"Amount", 2, true},
                {"How it comes off", 4}},
               {}};
    for (const auto& [name, some] : usesByMaterial(file)) {
        if (!name.empty()) {
            uses.rows.push_back(group(name, {}, amountInAll(file, some)));
        }
        for (const MaterialUse* use : some) {
            uses.rows.push_back(useRow(at, *use));
        }
    }
    addOr(section, std::move(uses), "No material was introduced.");
    Table lots{{{"Lot", 2}, {"What it is", 5}, {"Where it comes from", 7}}, {}};
    for (const Lot& lot : file.lots) {
        lots.rows.push_back(
            row({lot.number, kindText(file.material(lot.material)), originText(file, lot)},
                refOf(lot.id)));
    }
    addPart(section, "The lots, and what they were made from", std::move(lots));
    addCutAndNotUsed(section, at);
    return section;
}

} // namespace headcap::core::report
