#include "core/treatment/bench_log.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/materials/conversion.h"
#include "core/treatment/setting_times.h"
#include "core/treatment/work_title.h"
#include "core/values/contract.h"

namespace headcap::core {
namespace {

// What a use takes from its lot, as that is counted.
std::optional<Amount> counted(const MaterialUse& use, const Shelf& shelf) {
    const Lot* lot = use.lot ? shelf.lot(*use.lot) : nullptr;
    const Material* kind = lot == nullptr ? nullptr : shelf.material(lot->material);
    if (kind == nullptr || !use.amount) {
        return std::nullopt;
    }
    const auto amount = asCounted(*use.amount, *lot, *kind);
    return amount ? std::optional{*amount} : std::nullopt;
}

std::string_view countedIn(Unit unit) {
    constexpr std::array<std::string_view, 6> kNames{"grams",  "millilitres", "square millimetres",
                                                     "metres", "sheets",      "pieces"};
    return kNames[static_cast<std::size_t>(unit)];
}

std::optional<StepProblem> problemOf(const LoggedStep& logged, const Shelf& shelf) {
    const Step& step = logged.step;
    if (step.technique.empty() && step.place.empty() && step.description.empty()) {
        return StepProblem::nothingSaid;
    }
    if (step.minutes < Minutes{0}) {
        return StepProblem::negativeTime;
    }
    for (const MaterialUse& use : logged.uses) {
        HEADCAP_CONTRACT(use.step == step.id && use.job == step.job);
        if (use.amount && use.amount->count <= 0) {
            return StepProblem::amountNotAbove;
        }
        if (!use.lot) {
            continue;
        }
        if (shelf.materialOf(*use.lot) == nullptr) {
            return StepProblem::lotUnknown;
        }
        if (use.amount && !counted(use, shelf)) {
            return StepProblem::unitDiffers;
        }
    }
    return std::nullopt;
}

void writeStep(Change& change, const LoggedStep& logged, const Shelf& shelf, IdSource& ids) {
    change.add(logged.step);
    for (const MaterialUse& use : logged.uses) {
        change.add(use);
        if (const auto amount = counted(use, shelf)) {
            change.add(LedgerEntry{.id = ids.next<LedgerEntry>(),
                                   .lot = *use.lot,
                                   .at = logged.step.at,
                                   .who = logged.step.who,
                                   .kind = LedgerKind::used,
                                   .amount = amount->negated(),
                                   .use = use.id,
                                   .contraryOf = std::nullopt,
                                   .note = {}});
        }
    }
}

// Where it sets, its setting time is noted with it.
void writeSetting(Change& change, const Step& step, const TechniquesInForce& techniques,
                  IdSource& ids) {
    if (const auto setting = settingOf(step, techniques, ids)) {
        change.add(*setting);
    }
}

// What the struck step's checks answered stands for the one that says it rightly.
void keepChecks(Change& change, const JobFile& file, const Id<Step>& from, const Id<Step>& to,
                IdSource& ids) {
    for (const StepCheck& check : file.stepChecks) {
        if (check.step == from) {
            StepCheck kept = check;
            kept.id = ids.next<StepCheck>();
            kept.step = to;
            change.add(kept);
        }
    }
}

void giveBack(Change& change, const JobFile& file, const Step& step, const Striking& striking,
              IdSource& ids) {
    for (const MaterialUse* use : file.usesOf(step)) {
        for (const LedgerEntry& entry : standingEntries(file.ledger, use->id)) {
            change.add(LedgerEntry{.id = ids.next<LedgerEntry>(),
                                   .lot = entry.lot,
                                   .at = striking.at,
                                   .who = striking.who,
                                   .kind = LedgerKind::contrary,
                                   .amount = entry.amount.negated(),
                                   .use = entry.use,
                                   .contraryOf = entry.id,
                                   .note = striking.why});
        }
    }
}

tl::expected<Step, StepProblem> struck(const JobFile& file, const Id<Step>& id,
                                       const Striking& striking) {
    const Step* step = file.step(id);
    if (step == nullptr) {
        return tl::unexpected(StepProblem::notAStep);
    }
    if (step->struckAt) {
        return tl::unexpected(StepProblem::alreadyStruck);
    }
    if (striking.why.empty()) {
        return tl::unexpected(StepProblem::reasonMissing);
    }
    Step result = *step;
    result.struckAt = striking.at;
    result.struckBy = striking.who;
    result.struckWhy = striking.why;
    return result;
}

// Records that name the old step, made to name the new one.
template <class Record>
void follow(Change& change, const JobFile& file, const std::vector<Record>& records,
            const Id<Step>& from, const Id<Step>& to) {
    for (const Record& record : records) {
        if (record.step == from) {
            Record moved = record;
            moved.step = to;
            change.update(moved, file.revisionOf(refOf(record.id)));
        }
    }
}

} // namespace

tl::expected<Change, StepProblem> logStep(const LoggedStep& logged, const Shelf& shelf,
                                          const TechniquesInForce& techniques, IdSource& ids) {
    if (const auto problem = problemOf(logged, shelf)) {
        return tl::unexpected(*problem);
    }
    Change change{.sentence = "Step logged: " + stepTitle(logged.step, techniques),
                  .who = logged.step.who};
    writeStep(change, logged, shelf, ids);
    writeSetting(change, logged.step, techniques, ids);
    return change;
}

tl::expected<Change, StepProblem> strikeStep(const JobFile& file, const Id<Step>& id,
                                             const Striking& striking, IdSource& ids) {
    const auto step = struck(file, id, striking);
    if (!step) {
        return tl::unexpected(step.error());
    }
    Change change{.sentence = fmt::format("Step struck: {}: {}", stepTitle(*step, file.techniques),
                                          striking.why),
                  .who = striking.who};
    change.update(*step, file.revisionOf(refOf(id)));
    giveBack(change, file, *step, striking, ids);
    return change;
}

tl::expected<Change, StepProblem> correctStep(const JobFile& file, const Id<Step>& old,
                                              LoggedStep rightly, const Shelf& shelf,
                                              const Striking& striking, IdSource& ids) {
    const auto step = struck(file, old, striking);
    if (!step) {
        return tl::unexpected(step.error());
    }
    rightly.step.corrects = old;
    if (const auto problem = problemOf(rightly, shelf)) {
        return tl::unexpected(*problem);
    }
    Change change{.sentence = fmt::format("Step corrected: {}: {}",
                                          stepTitle(rightly.step, file.techniques), striking.why),
                  .who = striking.who};
    change.update(*step, file.revisionOf(refOf(old)));
    giveBack(change, file, *step, striking, ids);
    writeStep(change, rightly, shelf, ids);
    writeSetting(change, rightly.step, file.techniques, ids);
    keepChecks(change, file, old, rightly.step.id, ids);
    follow(change, file, file.clocks, old, rightly.step.id);
    follow(change, file, file.facsimiles, old, rightly.step.id);
    follow(change, file, file.photographs, old, rightly.step.id);
    return change;
}

std::string unitSentence(const LoggedStep& logged, const Shelf& shelf) {
    for (const MaterialUse& use : logged.uses) {
        const Lot* lot = use.lot ? shelf.lot(*use.lot) : nullptr;
        const Material* kind = lot == nullptr ? nullptr : shelf.material(lot->material);
        if (kind != nullptr && use.amount && !counted(use, shelf)) {
            return fmt::format("Lot {} is counted in {}, and {} can't be taken from it.",
                               lotName(*lot, kind), countedIn(kind->unit), toText(*use.amount));
        }
    }
    return {};
}

std::vector<LedgerEntry> standingEntries(const std::vector<LedgerEntry>& ledger,
                                         const Id<MaterialUse>& use) {
    std::vector<LedgerEntry> standing;
    std::ranges::copy_if(ledger, std::back_inserter(standing), [&](const LedgerEntry& entry) {
        return entry.use == use && !entry.contraryOf &&
               std::ranges::find(ledger, std::optional{entry.id}, &LedgerEntry::contraryOf) ==
                   ledger.end();
    });
    return standing;
}

std::string stepTitle(const Step& step, const TechniquesInForce& techniques) {
    std::string title = techniques.nameOf(step.technique);
    if (title.empty()) {
        title = step.description;
    }
    return workTitle(title, step.place);
}

} // namespace headcap::core
