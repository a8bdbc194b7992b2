#include "core/report/wanted.h"

#include <algorithm>
#include <set>

#include "core/materials/cut_for_job.h"
#include "core/report/labels.h"
#include "core/report/repair_steps.h"
#include "core/report/work_words.h"
#include "core/report/writing.h"
#include "core/treatment/approval.h"

namespace headcap::core::report {
namespace {

void wantWords(Wanted& wanted, const JobFile& file) {
    std::set<Id<Proposal>> proposals;
    for (const Proposal& proposal : file.proposals) {
        proposals.insert(proposal.id);
        wanted.say("treatment_proposed", proposal,
                   {proposal.aim, proposal.risks, proposal.notIncluded});
    }
    std::set<Id<ProposalOption>> options;
    for (const ProposalOption& option : file.options) {
        if (proposals.contains(option.proposal)) {
            options.insert(option.id);
            wanted.say("treatment_proposed", option,
                       {option.name, option.effect, option.risk,
                        saysNothing(option.irreversible) ? "" : option.irreversible});
        }
    }
    for (const ProposalLine& line : file.lines) {
        if (options.contains(line.option)) {
            wanted.say("treatment_proposed", line, {line.description, line.place, line.materials});
        }
    }
    for (const Decision& decision : file.decisions) {
        wanted.say("treatment_approved", decision,
                   {decision.byName, decision.authority, decision.limits, decision.note});
    }
    for (const Notice& notice : file.notices) {
        wanted.say("treatment_approved", notice, {notice.text, notice.answer, notice.toldTo});
    }
    const auto lines = approvedLines(file);
    for (const ProposalLine* line : lines) {
        wanted.say("treatment_done", *line, {line->description});
    }
    for (const Step& step : file.steps) {
        const bool work = isWorkOnTheBook(step.kind);
        const bool covered = std::ranges::any_of(
            lines, [&](const ProposalLine* line) { return carriesOut(step, *line); });
        if (!step.struckAt && ((work && !covered) || step.kind == StepKind::incident)) {
            wanted.say("treatment_done", step, {step.description, step.place});
        }
    }
}

void wantStep(Wanted& wanted, const JobFile& file, const Step& step) {
    wanted.say("log", step, {step.description, step.place, step.removed, step.struckWhy});
    const auto uses = file.usesOf(step);
    for (const MaterialUse* use : uses) {
        wanted.say("log", step, {lotNumber(file, use->lot), use->material, amountText(file, *use)});
    }
    if (step.struckAt) {
        wanted.say("log", step, {std::string{labels::kStruckOn}});
        return;
    }
    if (isRepair(file, step)) {
        wanted.say("disclosures_b", step, {step.description, step.place, step.undoing});
        for (const MaterialUse* use : uses) {
            wanted.say("disclosures_b", step, {lotNumber(file, use->lot), use->material});
        }
    }
    if (!step.removed.empty() || step.kind == StepKind::removal) {
        wanted.say("disclosures_d", step, {step.removed, step.removedFate, step.place});
    }
    if (step.reversibility == Reversibility::no) {
        wanted.say("disclosures_e", step, {step.description, step.place, step.undoing});
    }
}

void wantMaterials(Wanted& wanted, const JobFile& file) {
    for (const MaterialUse& use : file.uses) {
        const Step* step = file.step(use.step);
        if (step == nullptr || step->struckAt) {
            continue;
        }
        wanted.say("disclosures_c", use,
                   {lotNumber(file, use.lot), use.material, amountText(file, use),
                    use.place.empty() ? step->place : use.place,
                    use.removal.empty() && use.stays ? step->undoing : use.removal,
                    use.overrideReason});
        const Lot* lot = file.lot(use.lot);
        const Material* kind = lot ? file.material(lot->material) : nullptr;
        if (use.stays && kind != nullptr && kind->reversibility == Reversibility::no) {
            wanted.say("disclosures_e", use, {lot->number, kind->removal});
        }
    }
    for (const Lot& lot : file.lots) {
        const Material* kind = file.material(lot.material);
        wanted.say("disclosures_c", lot,
                   {lot.number, kind ? kind->name : "", lot.supplier, lot.maker, lot.batch,
                    lot.savedFrom, lot.recipe, lotNumber(file, lot.parent)});
    }
    for (const CutForJob& cut : cutAndNotUsed(file)) {
        const auto cutting = std::ranges::find(file.cuttings, cut.cutting, &Cutting::id);
        wanted.say("disclosures_c", *cutting, {cut.lot});
    }
}

} // namespace

void wantTreatment(Wanted& wanted, const JobFile& file) {
    wantWords(wanted, file);
    for (const Step& step : file.steps) {
        wantStep(wanted, file, step);
    }
    wantMaterials(wanted, file);
}

} // namespace headcap::core::report
