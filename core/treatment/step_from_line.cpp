// The step that a line says.
#include <algorithm>

#include "core/materials/fitness.h"
#include "core/materials/substances.h"
#include "core/treatment/step_line.h"
#include "core/treatment/wasted.h"

namespace headcap::core {
namespace {

std::string roleOf(MaterialClass kind) {
    switch (kind) {
    case MaterialClass::paper:
        return "paper";
    case MaterialClass::tissue:
        return "repair tissue";
    case MaterialClass::board:
        return "board";
    case MaterialClass::leather:
        return "leather";
    case MaterialClass::vellum:
        return "vellum";
    case MaterialClass::cloth:
        return "cloth";
    case MaterialClass::thread:
        return "thread";
    case MaterialClass::adhesiveDry:
    case MaterialClass::adhesivePrepared:
        return "adhesive";
    case MaterialClass::solvent:
        return "solvent";
    case MaterialClass::consolidant:
        return "consolidant";
    case MaterialClass::ink:
        return "ink";
    case MaterialClass::consumable:
        break;
    }
    return "consumable";
}

MaterialUse useFrom(const LineUse& said, const Step& step, const LineContext& context,
                    IdSource& ids) {
    MaterialUse use{.id = ids.next<MaterialUse>(),
                    .job = step.job,
                    .step = step.id,
                    .lot = said.lot,
                    .material = said.material,
                    .amount = said.amount,
                    .place = step.place};
    if (said.lot) {
        if (const Material* kind = context.shelf.materialOf(*said.lot)) {
            fillFrom(use, *kind);
        }
    } else if (const auto kind = substanceAsMaterial(said.material)) {
        fillFrom(use, *kind);
    }
    if (said.isWasted) {
        use.role = kWastedRole;
        use.stays = false;
        use.removal.clear();
    }
    return use;
}

} // namespace

void fillFrom(MaterialUse& use, const Material& kind) {
    use.role = roleOf(kind.kind);
    use.stays = kind.kind != MaterialClass::solvent && kind.kind != MaterialClass::consumable;
    use.removal = kind.removal;
}

TakenOut takenOutIn(const StepLine& line) {
    TakenOut said = takenOutIn(line.description, line.kind);
    // "removed spine label, kept": the place is what was taken off.
    if (said.what.empty() && line.technique == "removing") {
        said.what = line.place;
    }
    return said;
}

LoggedStep stepFrom(const StepLine& line, const Id<Job>& job, const Id<Person>& who, Instant now,
                    const LineContext& context, IdSource& ids) {
    const Minutes minutes = line.minutes.value_or(Minutes{0});
    LoggedStep logged{.step = Step{.id = ids.next<Step>(),
                                   .job = job,
                                   .part = line.part,
                                   .at = now - minutes,
                                   .who = line.person.value_or(who),
                                   .kind = line.kind,
                                   .technique = line.technique,
                                   .place = line.place,
                                   .description = line.description,
                                   .minutes = minutes,
                                   .line = line.line,
                                   .corrects = std::nullopt,
                                   .struckBy = std::nullopt}};
    Step& step = logged.step;
    step.temperatureTenthsC = line.temperatureTenthsC;
    step.humidityPercent = line.humidityPercent;
    step.concentration = line.concentration;
    step.pressure = line.pressure;
    if (line.sets) {
        step.setsUntil = now + *line.sets;
    }
    const auto known = std::ranges::find(context.techniques, line.technique, &Technique::key);
    if (known != context.techniques.end()) {
        step.reversibility = known->reversibility;
        step.undoing = known->undoing;
    }
    TakenOut out = takenOutIn(line);
    step.removed = std::move(out.what);
    step.removedFate = std::move(out.fate);
    for (const LineUse& said : line.uses) {
        MaterialUse use = useFrom(said, step, context, ids);
        const Material* kind = said.lot ? context.shelf.materialOf(*said.lot) : nullptr;
        if (kind != nullptr && isSheet(kind->kind)) {
            use.grainAtSpine = line.grainAtSpine;
        }
        logged.uses.push_back(std::move(use));
    }
    return logged;
}

} // namespace headcap::core
