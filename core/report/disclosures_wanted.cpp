#include "core/custody/hazard_evidence.h"
#include "core/report/disclosure_check.h"

#include <algorithm>
#include <set>

#include "core/report/labels.h"
#include "core/report/repair_steps.h"
#include "core/report/worked_on.h"
#include "core/report/writing.h"
#include "core/treatment/approval.h"

namespace headcap::core {
namespace {

namespace labels = report::labels;

std::string trimmed(const std::string& text) {
    constexpr std::string_view kBlanks = " \t\r\n";
    const std::size_t begin = text.find_first_not_of(kBlanks);
    return begin == std::string::npos
               ? ""
               : text.substr(begin, text.find_last_not_of(kBlanks) - begin + 1);
}

// Gathers what must be said.
class Wanted {
public:
    template <class Record>
    void say(std::string_view section, const Record& record,
             std::initializer_list<std::string> texts = {}) {
        const RecordRef ref = refOf(record.id);
        m_all.push_back({std::string{section}, ref, {}, {}});
        for (const std::string& text : texts) {
            if (const std::string words = trimmed(text); !words.empty()) {
                m_all.push_back({std::string{section}, ref, {}, words});
            }
        }
    }
    // Where there is something to say.
    template <class Record>
    void fact(std::string_view section, const Record& record, std::string_view label,
              const std::string& text) {
        if (const std::string words = trimmed(text); !words.empty()) {
            m_all.push_back({std::string{section}, refOf(record.id), std::string{label}, words});
        }
    }
    // Said in any case, be it that it is not recorded.
    template <class Record>
    void always(std::string_view section, const Record& record, std::string_view label) {
        m_all.push_back({std::string{section}, refOf(record.id), std::string{label}, {}});
    }
    [[nodiscard]] std::vector<Disclosure> take() { return std::move(m_all); }

private:
    std::vector<Disclosure> m_all;
};

std::string lotNumber(const JobFile& file, const std::optional<Id<Lot>>& id) {
    const Lot* lot = file.lot(id);
    return lot ? lot->number : "";
}

void wantBook(Wanted& wanted, const JobFile& file) {
    for (const Item& part : file.parts) {
        wanted.say("book", part, {part.title, part.binding});
    }
    for (const Work& work : file.works) {
        wanted.say("book", work, {work.author, work.title, work.leaves});
    }
    for (const Piece& piece : file.pieces) {
        wanted.say("book", piece, {piece.what, piece.returned});
    }
}

void wantCondition(Wanted& wanted, const JobFile& file) {
    for (const Hazard& hazard : file.hazards) {
        wanted.say("condition", hazard, {hazard.place, hazard.note});
        if (stillWarns(hazard)) {
            wanted.say("advice", hazard);
        }
    }
    for (const Examination& examination : file.examinations) {
        wanted.say("condition", examination, {examination.method, examination.notExamined});
    }
    for (const Finding& finding : file.findings) {
        wanted.say("condition", finding,
                   {finding.place, finding.observed, finding.inferred, finding.extent});
        if (finding.handling != Handling::yes && !report::isWorkedOn(file, finding)) {
            wanted.say("advice", finding, {finding.place});
        }
    }
    for (const Test& test : file.tests) {
        wanted.say("condition", test, {test.purpose, test.result, test.consent, test.kept});
    }
}

void wantCollation(Wanted& wanted, const JobFile& file) {
    if (file.collations.empty()) {
        wanted.say("disclosures_f", file.item);
    }
    for (const Collation& collation : file.collations) {
        wanted.always("collation", collation, labels::kThisCopy);
        wanted.fact("collation", collation, labels::kThisCopy, collation.statement);
        wanted.fact("collation", collation, labels::kFormula,
                    report::formulaText(collation.formula));
        wanted.fact("collation", collation, labels::kExtent, collation.extent);
        wanted.fact("collation", collation, labels::kAgainst, collation.authority);
        wanted.fact("collation", collation, labels::kEstablished, collation.method);
        wanted.fact("collation", collation, labels::kNotLookedAt, collation.notExamined);
        wanted.always("collation", collation, labels::kFinished);
        if (collation.leavesCalledFor != 0 || collation.leavesPresent != 0 ||
            collation.platesCalledFor != 0 || collation.platesPresent != 0) {
            wanted.always("collation", collation, labels::kTally);
        }
    }
    for (const CollationFinding& finding : file.collationFindings) {
        wanted.say(
            "collation", finding,
            {finding.place, finding.found, finding.expected, finding.note, finding.decisionNote});
        const bool gap = finding.kind == CollationKind::lacking ||
                         finding.kind == CollationKind::blankLacking ||
                         finding.kind == CollationKind::tornWithLoss;
        if (gap && finding.decision != CollationDecision::madeGood &&
            finding.decision != CollationDecision::notNeeded) {
            wanted.say("disclosures_f", finding, {finding.place});
        }
    }
}

void wantWalks(Wanted& wanted, const JobFile& file) {
    for (const Walk& walk : file.walks) {
        const Person* person = file.person(walk.who);
        wanted.say("collation", walk, {person ? person->name : "", walk.note});
    }
    for (const CalledPlate& plate : file.plates) {
        wanted.say("collation", plate,
                   {plate.name, plate.belongsAt, plate.source, plate.foundAt, plate.note});
    }
}

void wantTreatment(Wanted& wanted, const JobFile& file) {
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
                       {option.name, option.effect, option.risk, option.irreversible});
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
        wanted.say("log", step,
                   {lotNumber(file, use->lot), use->material, report::amountText(file, *use)});
    }
    if (step.struckAt) {
        wanted.say("log", step, {std::string{labels::kStruckOn}});
        return;
    }
    if (report::isRepair(file, step)) {
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
                   {lotNumber(file, use.lot), use.material, report::amountText(file, use),
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
}

void wantLeaf(Wanted& wanted, const JobFile& file, const Facsimile& leaf) {
    constexpr std::string_view kSection = "disclosures_a";
    const bool printed = leaf.kind == SuppliedKind::facsimile;
    for (const auto& label :
         {labels::kLeaf, labels::kAgreement, labels::kHeldBy, labels::kComesOut}) {
        wanted.always(kSection, leaf, label);
    }
    for (const auto& label :
         {labels::kTakenFrom, labels::kEdition, labels::kPrinted, labels::kMarked}) {
        if (printed) {
            wanted.always(kSection, leaf, label);
        }
    }
    if (!printed) {
        wanted.always(kSection, leaf, labels::kProvenance);
    }
    wanted.fact(kSection, leaf, labels::kLeaf, leaf.place);
    wanted.fact(kSection, leaf, labels::kTakenFrom, leaf.institution);
    wanted.fact(kSection, leaf, labels::kTakenFrom, leaf.shelfmark);
    wanted.fact(kSection, leaf, labels::kEdition, leaf.edition);
    wanted.fact(kSection, leaf, labels::kEdition, leaf.sourceDate ? toText(*leaf.sourceDate) : "");
    wanted.fact(kSection, leaf, labels::kImages, leaf.address);
    wanted.fact(kSection, leaf, labels::kImages, leaf.consultedOn ? "consulted on" : "");
    wanted.fact(kSection, leaf, labels::kPermission, leaf.permission);
    wanted.fact(kSection, leaf, labels::kProvenance, leaf.provenance);
    wanted.fact(kSection, leaf, labels::kAgreement, leaf.verification);
    wanted.fact(kSection, leaf, labels::kPrinted, leaf.printing);
    wanted.fact(kSection, leaf, labels::kPrinted, lotNumber(file, leaf.printedOn));
    wanted.fact(kSection, leaf, labels::kHeldBy, leaf.attachment);
    wanted.fact(kSection, leaf, labels::kHeldBy, lotNumber(file, leaf.attachedWith));
    wanted.fact(kSection, leaf, labels::kMarked, leaf.marking);
    wanted.fact(kSection, leaf, labels::kComesOut, leaf.removal);
    if (file.step(leaf.step) != nullptr) {
        wanted.always(kSection, leaf, labels::kPutIn);
    }
    if (leaf.verdict != Verdict::sameSetting) {
        wanted.say("disclosures_f", leaf, {leaf.place});
    }
    wanted.say("advice", leaf, {leaf.place, leaf.removal});
}

void wantOpen(Wanted& wanted, const JobFile& file) {
    for (const Hazard& hazard : file.hazards) {
        if (hazard.state == HazardState::notTested || hazard.state == HazardState::suspected) {
            wanted.say("disclosures_f", hazard);
        }
    }
    for (const FollowUp& followUp : file.followUps) {
        if (!followUp.doneOn) {
            wanted.say("disclosures_f", followUp, {followUp.what, followUp.why});
        }
    }
}

void wantPeople(Wanted& wanted, const JobFile& file) {
    std::set<Id<Person>> people;
    for (const Step& step : file.steps) {
        people.insert(step.who);
    }
    const auto also = [&](const auto& records) {
        for (const auto& record : records) {
            if (record.who) {
                people.insert(*record.who);
            }
        }
    };
    also(file.examinations);
    also(file.tests);
    also(file.collations);
    also(file.collationFindings);
    also(file.walks);
    also(file.proposals);
    for (const Id<Person>& id : people) {
        if (const Person* person = file.person(id)) {
            wanted.say("people", *person, {person->name});
        }
    }
}

} // namespace

std::vector<Disclosure> disclosuresOf(const JobFile& file) {
    Wanted wanted;
    wantBook(wanted, file);
    wantCondition(wanted, file);
    wantCollation(wanted, file);
    wantWalks(wanted, file);
    wantTreatment(wanted, file);
    for (const Step& step : file.steps) {
        wantStep(wanted, file, step);
    }
    wantMaterials(wanted, file);
    for (const Facsimile& leaf : file.facsimiles) {
        wantLeaf(wanted, file, leaf);
    }
    wantOpen(wanted, file);
    for (const Photograph& photograph : file.photographs) {
        if (photograph.inReport) {
            wanted.say("figures", photograph, {photograph.caption, photograph.place});
        }
    }
    wantPeople(wanted, file);
    return wanted.take();
}

} // namespace headcap::core
