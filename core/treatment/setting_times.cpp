#include "core/treatment/setting_times.h"

#include <algorithm>

#include "core/treatment/bench_log.h"

namespace headcap::core {
namespace {

bool isWorkedOnSince(const JobFile& file, Instant over) {
    return std::ranges::any_of(file.steps,
                               [&](const Step& step) { return !step.struckAt && step.at >= over; });
}

bool isNoted(const JobFile& file, const Step& step) {
    return std::ranges::any_of(file.settings,
                               [&](const Setting& one) { return one.step == step.id; });
}

// Of the steps that say a time and have none noted by itself.
std::vector<SettingTime> saidBySteps(const JobFile& file, Instant now) {
    constexpr std::chrono::hours kRemembered{24};
    std::vector<SettingTime> times;
    for (const Step& step : file.steps) {
        if (step.struckAt || !step.setsUntil || isNoted(file, step)) {
            continue;
        }
        const Instant until = *step.setsUntil;
        const bool isSeen =
            until <= now && (now - until > kRemembered || isWorkedOnSince(file, until));
        if (!isSeen) {
            times.push_back({.step = &step,
                             .what = stepTitle(step, file.techniques),
                             .from = step.at + step.minutes,
                             .until = until});
        }
    }
    return times;
}

std::vector<SettingTime> noted(const JobFile& file) {
    std::vector<SettingTime> times;
    for (const Setting& setting : file.settings) {
        const Step* step = file.step(setting.step);
        const bool isStruck = step != nullptr && step->struckAt;
        if (!setting.seenAt && !isStruck) {
            times.push_back({.step = step,
                             .setting = &setting,
                             .what = setting.what.empty() && step != nullptr
                                         ? stepTitle(*step, file.techniques)
                                         : setting.what,
                             .from = setting.startedAt,
                             .until = setting.endsAt});
        }
    }
    return times;
}

} // namespace

std::vector<SettingTime> settingTimes(const JobFile& file, Instant now) {
    auto times = noted(file);
    const auto said = saidBySteps(file, now);
    times.insert(times.end(), said.begin(), said.end());
    for (SettingTime& time : times) {
        time.left = leftOf(time, now);
    }
    std::ranges::stable_sort(times, {}, &SettingTime::until);
    const auto over = std::stable_partition(times.begin(), times.end(),
                                            [](const SettingTime& time) { return !time.isOver(); });
    std::reverse(over, times.end());
    return times;
}

Minutes leftOf(const SettingTime& time, Instant now) {
    return time.until > now ? std::chrono::ceil<Minutes>(time.until - now) : Minutes{0};
}

double shareLeft(const SettingTime& time, Instant now) {
    const auto whole = time.until - time.from;
    if (whole <= Instant::duration::zero()) {
        return 0;
    }
    return std::clamp(static_cast<double>((time.until - now).count()) /
                          static_cast<double>(whole.count()),
                      0.0, 1.0);
}

std::optional<Setting> settingOf(const Step& step, const TechniquesInForce& techniques,
                                 IdSource& ids) {
    if (!step.setsUntil) {
        return std::nullopt;
    }
    return Setting{.id = ids.next<Setting>(),
                   .job = step.job,
                   .step = step.id,
                   .what = stepTitle(step, techniques),
                   .startedAt = step.at + step.minutes,
                   .endsAt = *step.setsUntil,
                   .seenBy = std::nullopt};
}

Change seeTo(const JobFile& file, const SettingTime& time, std::optional<Id<Person>> who,
             Instant now, IdSource& ids) {
    Change change{.sentence = (time.isOver() ? "Seen to: " : "Taken out early: ") + time.what,
                  .who = who};
    if (time.setting != nullptr) {
        Setting seen = *time.setting;
        seen.seenAt = now;
        seen.seenBy = who;
        change.update(seen, file.revisionOf(refOf(seen.id)));
    } else if (time.step != nullptr) {
        auto seen = settingOf(*time.step, file.techniques, ids);
        seen->seenAt = now;
        seen->seenBy = who;
        change.add(*seen);
    }
    return change;
}

} // namespace headcap::core
