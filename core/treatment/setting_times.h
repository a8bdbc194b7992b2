// What sets, dries or is pressed: until when, how long still, and when it is over, that it is,
// until somebody has seen to it. Said by a step, or noted by itself. Only ends are kept, never what
// is left, so that a restart or a machine that slept changes nothing.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

struct SettingTime {
    const Step* step = nullptr;       // that began it
    const Setting* setting = nullptr; // where it is noted by itself
    std::string what;
    Instant from;
    Instant until;
    Minutes left{0}; // rounded up; nothing where it is over
    [[nodiscard]] bool isOver() const { return left == Minutes{0}; }
};

// Those running, the next to end first; then those that are over and nobody has seen to, the last
// to end first. One that only a step says counts as seen to by the next step begun after it, and
// after a day.
[[nodiscard]] std::vector<SettingTime> settingTimes(const JobFile& file, Instant now);

// What is left of it, rounded up to the minute; nothing where it is over.
[[nodiscard]] Minutes leftOf(const SettingTime& time, Instant now);

// The share of its time still to run, from 1 to 0.
[[nodiscard]] double shareLeft(const SettingTime& time, Instant now);

// Noted with the step that is logged, so that it can be seen to by itself.
[[nodiscard]] std::optional<Setting> settingOf(const Step& step,
                                               const TechniquesInForce& techniques, IdSource& ids);

// Somebody saw that it is over, or took it out before its time.
[[nodiscard]] Change seeTo(const JobFile& file, const SettingTime& time,
                           std::optional<Id<Person>> who, Instant now, IdSource& ids);

} // namespace headcap::core
