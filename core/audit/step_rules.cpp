#include "core/audit/rules.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/audit/facts.h"
#include "core/custody/job_states.h"
#include "core/treatment/clocks.h"
#include "core/treatment/setting_times.h"
#include "core/treatment/step_checks.h"
#include "core/treatment/undoing.h"
#include "core/treatment/wasted.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

using facts::eachStep;

bool addsOrTakesAway(const Step& step) {
    return step.kind == StepKind::treatment || step.kind == StepKind::removal;
}

bool leavesMaterial(const JobFile& file, const Step& step) {
    return std::ranges::any_of(
        file.usesOf(step), [](const MaterialUse* use) { return use->stays && !isWasted(*use); });
}

void noMaterial(const AuditContext& at, const AuditSink& found) {
    eachStep(at, found, "puts something into the book and names no material that stays in it.",
             [&](const Step& step) {
                 const Technique* technique = at.file.techniques.named(step.technique);
                 return technique != nullptr && technique->adds && !leavesMaterial(at.file, step);
             });
}

// Of a technique that is known it is known whether it adds anything.
void unknownTechnique(const AuditContext& at, const AuditSink& found) {
    eachStep(at, found,
             "names no technique that is known here, and no material: whether anything was put "
             "into the book is not said.",
             [&](const Step& step) {
                 return step.kind == StepKind::treatment &&
                        at.file.techniques.named(step.technique) == nullptr &&
                        !leavesMaterial(at.file, step);
             });
}

void reversibility(const AuditContext& at, const AuditSink& found) {
    eachStep(at, found, "does not say whether it can be undone.", [](const Step& step) {
        return addsOrTakesAway(step) && step.reversibility == Reversibility::unknown;
    });
}

void undoing(const AuditContext& at, const AuditSink& found) {
    eachStep(at, found, "can be undone, and does not say how.", [](const Step& step) {
        const bool can = step.reversibility == Reversibility::yes ||
                         step.reversibility == Reversibility::withCare;
        return addsOrTakesAway(step) && can && step.undoing.empty();
    });
}

void removedFate(const AuditContext& at, const AuditSink& found) {
    eachStep(at, found, "took something out, and does not say what became of it.",
             [](const Step& step) { return !step.removed.empty() && step.removedFate.empty(); });
}

void removedWhat(const AuditContext& at, const AuditSink& found) {
    eachStep(at, found, "is a removal, and does not say what was taken out.", [](const Step& step) {
        return step.kind == StepKind::removal && step.removed.empty();
    });
}

bool hasPicture(const JobFile& file, const Step& step) {
    const RecordRef ref = refOf(step.id);
    return std::ranges::any_of(
               file.photographs,
               [&](const Photograph& photograph) { return photograph.step == step.id; }) ||
           std::ranges::any_of(file.attachments, [&](const Attachment& attachment) {
               return attachment.subject == ref;
           });
}

void uncovered(const AuditContext& at, const AuditSink& found) {
    eachStep(at, found, "laid open what is covered again: it has no photograph or drawing.",
             [&](const Step& step) {
                 return step.kind == StepKind::uncovering && !hasPicture(at.file, step);
             });
}

void incident(const AuditContext& at, const AuditSink& found) {
    eachStep(at, found, "is an incident, and the owner has not been told.", [&](const Step& step) {
        return step.kind == StepKind::incident &&
               !facts::isToldFrom(at.file, NoticeSubject::incident, at.clock.dayOf(step.at));
    });
}

void undoingUntrue(const AuditContext& at, const AuditSink& found) {
    for (const Step* step : facts::standing(at.file)) {
        const std::string doubt = undoingDoubt(at.file, *step);
        if (!doubt.empty()) {
            found(*step, fmt::format("{}: how it is undone is said in the technique's usual words, "
                                     "which {}. Say it as it was done.",
                                     facts::nameOf(*step, at), doubt));
        }
    }
}

void unplaced(const AuditContext& at, const AuditSink& found) {
    eachStep(at, found, "does not say where in the book.", [&](const Step& step) {
        const bool isLaidOpen = step.kind == StepKind::uncovering;
        return step.place.empty() &&
               (isLaidOpen || (addsOrTakesAway(step) && !at.file.usesOf(step).empty()));
    });
}

void stillSetting(const AuditContext& at, const AuditSink& found) {
    if (!hasReached(at.file.job.state, JobState::passed)) {
        return;
    }
    for (const SettingTime& time : settingTimes(at.file, at.clock.now())) {
        const std::string says =
            time.isOver() ? " has set, and nobody has seen to it." : " has not finished setting.";
        if (time.setting != nullptr) {
            found(*time.setting, time.what + says);
        } else if (!time.isOver()) {
            found(*time.step, time.what + says);
        }
    }
}

void uncheckedSteps(const AuditContext& at, const AuditSink& found) {
    if (!hasReached(at.file.job.state, JobState::passed)) {
        return;
    }
    auto steps = facts::standing(at.file);
    std::erase_if(steps, [&](const Step* step) { return openChecks(at.file, *step).empty(); });
    if (!steps.empty()) {
        found(*steps.front(),
              fmt::format("{} no answer to a check of {} technique, the first {}.",
                          steps.size() == 1 ? "One step has"
                                            : std::to_string(steps.size()) + " steps have",
                          steps.size() == 1 ? "its" : "their", facts::nameOf(*steps.front(), at)));
    }
}

void clocksUnlogged(const AuditContext& at, const AuditSink& found) {
    for (const BenchClock* clock : clocksToLog(at.file)) {
        found(*clock, fmt::format("{} of {} were measured and not logged.",
                                  minutesText(ranFor(*clock, at.clock.now())),
                                  clockTitle(*clock, at.file.techniques)));
    }
    if (!hasReached(at.file.job.state, JobState::passed)) {
        return;
    }
    for (const BenchClock* clock : runningClocks(at.file)) {
        found(*clock,
              fmt::format("The clock of {} still runs.", clockTitle(*clock, at.file.techniques)));
    }
}

void inTheFuture(const AuditContext& at, const AuditSink& found) {
    eachStep(at, found, "is dated after today.",
             [&](const Step& step) { return at.clock.dayOf(step.at) > at.clock.today(); });
}

constexpr auto kMust = AuditSeverity::mustSettle;
constexpr auto kWorth = AuditSeverity::worthKnowing;
constexpr std::string_view kLog = "AIC Commentary 27; E.C.C.O. II Art. 10";
constexpr std::array kRules{
    AuditRule{"repair_material", Page::bench, kMust, kLog, noMaterial},
    AuditRule{"step_technique", Page::bench, kMust, kLog, unknownTechnique},
    AuditRule{"step_reversibility", Page::bench, kMust, "E.C.C.O. II Art. 9", reversibility},
    AuditRule{"step_undoing", Page::bench, kMust, "E.C.C.O. II Art. 9", undoing},
    AuditRule{"step_undoing_true", Page::bench, kMust, "E.C.C.O. II Art. 9", undoingUntrue},
    AuditRule{"removed_what", Page::bench, kMust, kLog, removedWhat},
    AuditRule{"removed_fate", Page::bench, kMust, kLog, removedFate},
    AuditRule{"uncovered_image", Page::bench, kMust, "AIC Commentary 25, 27", uncovered},
    AuditRule{"incident_told", Page::bench, kMust, "AIC Commentary 24", incident},
    AuditRule{"step_place", Page::bench, kMust, "AIC Commentary 23", unplaced},
    AuditRule{"setting_over", Page::bench, kMust, "common practice", stillSetting},
    AuditRule{"step_checks", Page::bench, kWorth, "common practice", uncheckedSteps},
    AuditRule{"clock_not_logged", Page::bench, kWorth, "common practice", clocksUnlogged},
    AuditRule{"step_in_future", Page::bench, kWorth, "common practice", inTheFuture},
};

} // namespace

std::span<const AuditRule> stepRules() {
    return kRules;
}

} // namespace headcap::core
