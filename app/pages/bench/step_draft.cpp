#include "app/pages/bench/step_draft.h"

#include <nlohmann/json.hpp>

#include "app/session/words.h"
#include "core/treatment/clocks.h"

namespace headcap::app {
namespace {

QString textOf(const StepDraft& draft) {
    nlohmann::json kept{{"step", core::toJson(draft.logged.step)}, {"reason", draft.reason}};
    kept["uses"] = nlohmann::json::array();
    for (const core::MaterialUse& use : draft.logged.uses) {
        kept["uses"].push_back(core::toJson(use));
    }
    kept["checks"] = nlohmann::json::array();
    for (const core::StepCheck& check : draft.checks) {
        kept["checks"].push_back(core::toJson(check));
    }
    kept["clock"] = draft.clock ? draft.clock->text() : std::string{};
    return fromCore(kept.dump());
}

template <class Record>
std::optional<Record> readRecord(const nlohmann::json& object) {
    auto record = core::recordFrom(core::kindOf<Record>(), object);
    return record ? std::optional{std::get<Record>(std::move(*record))} : std::nullopt;
}

std::optional<StepDraft> draftFrom(const QString& text) {
    const auto kept = nlohmann::json::parse(toCore(text), nullptr, false);
    if (!kept.is_object() || !kept.contains("step") || !kept.contains("uses") ||
        !kept["uses"].is_array()) {
        return std::nullopt;
    }
    auto step = readRecord<core::Step>(kept["step"]);
    if (!step) {
        return std::nullopt;
    }
    StepDraft draft{{std::move(*step)}, kept.value("reason", std::string{})};
    for (const nlohmann::json& one : kept["uses"]) {
        if (auto use = readRecord<core::MaterialUse>(one)) {
            draft.logged.uses.push_back(std::move(*use));
        }
    }
    for (const nlohmann::json& one : kept.value("checks", nlohmann::json::array())) {
        if (auto check = readRecord<core::StepCheck>(one)) {
            draft.checks.push_back(std::move(*check));
        }
    }
    if (const auto clock = core::Uuid::fromText(kept.value("clock", std::string{}))) {
        draft.clock = core::Id<core::BenchClock>{*clock};
    }
    return draft;
}

} // namespace

void keepDraft(Settings& settings, const core::Id<core::Job>& job,
               const std::optional<StepDraft>& draft) {
    QVariantMap kept = settings.value(Setting::stepDrafts).toMap();
    const QString key = fromCore(job.text());
    if (draft) {
        kept.insert(key, textOf(*draft));
    } else if (kept.remove(key) == 0) {
        return;
    }
    settings.set(Setting::stepDrafts, kept);
}

std::optional<StepDraft> keptDraft(const Settings& settings, const core::Id<core::Job>& job) {
    const QVariantMap kept = settings.value(Setting::stepDrafts).toMap();
    return draftFrom(kept.value(fromCore(job.text())).toString());
}

StepDraft newDraft(const core::Id<core::Job>& job, const core::Id<core::Person>& who,
                   core::Instant now, core::IdSource& ids) {
    return {{core::Step{.id = ids.next<core::Step>(), .job = job, .at = now, .who = who}}};
}

StepDraft draftFrom(const core::JobFile& file, const core::BenchClock& clock,
                    const core::Id<core::Person>& who, core::Instant now, core::IdSource& ids) {
    return {.logged = {core::stepOf(file, clock, who, now, ids)}, .clock = clock.id};
}

StepDraft correctionOf(const core::JobFile& file, const core::Step& step, core::IdSource& ids) {
    StepDraft draft{{step}};
    draft.logged.step.id = ids.next<core::Step>();
    draft.logged.step.corrects = step.id;
    for (const core::MaterialUse* use : file.usesOf(step)) {
        core::MaterialUse copy = *use;
        copy.id = ids.next<core::MaterialUse>();
        copy.step = draft.logged.step.id;
        draft.logged.uses.push_back(std::move(copy));
    }
    return draft;
}

} // namespace headcap::app
