#include <algorithm>

#include <fmt/format.h>

#include "core/custody/hazards.h"
#include "core/report/sections.h"
#include "core/report/trade_words.h"
#include "core/report/writing.h"
#include "core/values/english.h"

namespace headcap::core::report {
namespace {

bool tookOut(const Step& step) {
    return !step.struckAt && (step.kind == StepKind::removal || !step.removed.empty());
}

bool isOpen(const CollationFinding& finding) {
    const bool gap = finding.kind == CollationKind::lacking ||
                     finding.kind == CollationKind::blankLacking ||
                     finding.kind == CollationKind::tornWithLoss;
    return gap && finding.decision != CollationDecision::madeGood &&
           finding.decision != CollationDecision::notNeeded;
}

void addFindings(List& list, const JobFile& file) {
    for (const CollationFinding& finding : file.collationFindings) {
        if (isOpen(finding)) {
            list.items.push_back(
                {plain(sentence(told(
                     {fmt::format("{}: {}", orUnnamed(placeIn(file, finding.part, finding.place)),
                                  wordsFor(finding.kind)),
                      std::string{wordsFor(finding.decision)}, finding.decisionNote}))),
                 refOf(finding.id)});
        }
    }
}

void addLeaves(List& list, const JobFile& file) {
    for (const Facsimile& leaf : file.facsimiles) {
        if (leaf.verdict != Verdict::sameSetting) {
            list.items.push_back(
                {plain(sentence(fmt::format("The leaf supplied at {}: {}",
                                            orUnnamed(placeIn(file, leaf.part, leaf.place)),
                                            wordsFor(leaf.verdict)))),
                 refOf(leaf.id)});
        }
    }
}

void addNotCollated(List& list, const JobFile& file) {
    if (file.collations.empty()) {
        list.items.push_back(
            {plain("Whether the book is complete: it was not collated."), refOf(file.item.id)});
    }
}

void addHazards(List& list, const JobFile& file) {
    for (const Hazard& hazard : file.hazards) {
        if (hazard.state == HazardState::notTested || hazard.state == HazardState::suspected) {
            list.items.push_back({plain(sentence(fmt::format("{}: {}", hazardName(hazard.term),
                                                             core::wordsFor(hazard.state)))),
                                  refOf(hazard.id)});
        }
    }
}

void addFollowUps(List& list, const JobFile& file) {
    for (const FollowUp& followUp : file.followUps) {
        if (!followUp.doneOn) {
            list.items.push_back(
                {plain(joined({sentence(followUp.what), sentence(followUp.why),
                               followUp.dueOn ? "Due on " + dayText(*followUp.dueOn) + "." : ""},
                              " ")),
                 refOf(followUp.id)});
        }
    }
}

} // namespace

Section removals(const Context& at) {
    Section section{.key = "disclosures_d",
                    .title = "D. Original matter removed, moved or kept aside",
                    .level = 2};
    Table table{{{"What", 5}, {"From where", 3}, {"When", 3}, {"What became of it", 5}}, {}};
    for (const Step& step : at.file.steps) {
        if (tookOut(step)) {
            table.rows.push_back(
                row({step.removed.empty()
                         ? told({at.file.techniques.nameOf(step.technique), step.description})
                         : step.removed,
                     placeIn(at.file, step.part, step.place), dayText(at.clock.dayOf(step.at)),
                     step.removedFate.empty() ? "NOT RECORDED" : step.removedFate},
                    refOf(step.id)));
        }
    }
    addOr(section, std::move(table), "Nothing original was removed, moved or kept aside.");
    return section;
}

Section irreversibleActs(const Context& at) {
    const JobFile& file = at.file;
    Section section{.key = "disclosures_e", .title = "E. Acts that can't be undone", .level = 2};
    Table table{{{"Act", 5}, {"Where", 3}, {"When", 3}, {"Why, and what remains", 5}}, {}};
    for (const Step& step : file.steps) {
        if (!step.struckAt && step.reversibility == Reversibility::no) {
            table.rows.push_back(
                row({told({at.file.techniques.nameOf(step.technique), step.description}),
                     placeIn(file, step.part, step.place), dayText(at.clock.dayOf(step.at)),
                     step.undoing},
                    refOf(step.id)));
        }
    }
    for (const MaterialUse& use : file.uses) {
        const Lot* lot = file.lot(use.lot);
        const Material* kind = lot ? file.material(lot->material) : nullptr;
        const Step* step = file.step(use.step);
        if (use.stays && kind != nullptr && kind->reversibility == Reversibility::no &&
            step != nullptr && !step->struckAt) {
            table.rows.push_back(
                row({"Use of " + useText(file, use),
                     placeIn(file, step->part, use.place.empty() ? step->place : use.place),
                     dayText(at.clock.dayOf(step->at)),
                     told({"not readily taken off again", kind->removal})},
                    refOf(use.id)));
        }
    }
    addOr(section, std::move(table), "Nothing was done that can't be undone.");
    return section;
}

Section unresolved(const Context& at) {
    Section section{.key = "disclosures_f", .title = "F. What is unresolved or sought", .level = 2};
    List list;
    addNotCollated(list, at.file);
    addFindings(list, at.file);
    addLeaves(list, at.file);
    addHazards(list, at.file);
    addFollowUps(list, at.file);
    addOr(section, std::move(list), "Nothing is unresolved, and nothing is sought.");
    return section;
}

std::vector<Section> disclosureSections(const Context& at) {
    Section head{.key = "disclosures", .title = "Disclosures"};
    return {std::move(head), suppliedLeaves(at),   repairs(at),   materialsIntroduced(at),
            removals(at),    irreversibleActs(at), unresolved(at)};
}

} // namespace headcap::core::report
