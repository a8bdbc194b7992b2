// A day's work over all jobs, and hours over a period, as a sheet to be printed or copied.
#pragma once

#include <functional>
#include <span>

#include "core/report/document.h"
#include "core/treatment/day_of_work.h"

namespace headcap::core {

struct DayOfWork {
    Day day;
    std::vector<WorkDone> work{};
    std::vector<SettingWork> settings{}; // of today only
    Day from;                            // of the hours
    Day to;
    std::vector<WorkDone> period{};
};

// Reads it; what sets belongs to today alone.
[[nodiscard]] DayOfWork loadDay(const RecordStore& store, const Clock& clock, Day day, Day from,
                                Day to);

struct DaySheetNames {
    std::string workshop{};
    const TechniquesInForce& techniques;
    // "09:10" by local time.
    std::function<std::string(Instant)> clockText{};
};
[[nodiscard]] Document daySheet(const DayOfWork& day, const DaySheetNames& names,
                                const Clock& clock);

// What a step is called in a list of many jobs: what was done, and where.
[[nodiscard]] std::string workText(const WorkDone& work, const TechniquesInForce& techniques);

} // namespace headcap::core
