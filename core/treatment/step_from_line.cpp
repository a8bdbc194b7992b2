// The step that a line says.
#include <algorithm>
#include <array>

#include "core/materials/fitness.h"
#include "core/treatment/line_words.h"
#include "core/treatment/step_line.h"

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

struct RemovedWords {
    std::string what{};
    std::string fate{};
};

// "old lining, kept in envelope 2": what was taken out, and what became of it. "kept" alone does
// not say where.
RemovedWords removedIn(const std::string& description) {
    static constexpr std::array<std::string_view, 7> kFates{
        "kept", "given back", "returned", "discarded", "thrown away", "put by", "stored"};
    const line::Words words = line::split(description);
    for (std::size_t at = 0; at < words.size(); ++at) {
        const bool isFate = std::ranges::any_of(kFates, [&](std::string_view fate) {
            return line::stands(words, at, line::wordsOf(fate));
        });
        if (!isFate) {
            continue;
        }
        RemovedWords said{description.substr(0, words[at].begin),
                          description.substr(words[at].begin)};
        while (!said.what.empty() &&
               std::string_view{" ,;:"}.find(said.what.back()) != std::string_view::npos) {
            said.what.pop_back();
        }
        if (words[at].lower == "kept" && at + 1 == words.size()) {
            said.fate.clear();
        }
        return said;
    }
    return {description, {}};
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
    const Material* kind = said.lot ? context.shelf.materialOf(*said.lot) : nullptr;
    if (kind != nullptr) {
        fillFrom(use, *kind);
    }
    return use;
}

} // namespace

void fillFrom(MaterialUse& use, const Material& kind) {
    use.role = roleOf(kind.kind);
    use.stays = kind.kind != MaterialClass::solvent && kind.kind != MaterialClass::consumable;
    use.removal = kind.removal;
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
    if (step.kind == StepKind::removal) {
        const RemovedWords said = removedIn(step.description);
        // "removed spine label, kept": the place is what was taken off.
        step.removed = said.what.empty() && step.technique == "removing" ? step.place : said.what;
        step.removedFate = said.fate;
    }
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
