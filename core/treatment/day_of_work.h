// The work of a day, or of some days, over all jobs: every step by its time, with who did it and
// how long, the sums by person and by job, and what sets.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/record/stores.h"
#include "core/treatment/techniques_in_force.h"

namespace headcap::core {

// A step with the names of what it belongs to.
struct WorkDone {
    Step step;
    std::string job;  // its number
    std::string book; // as headings name it
    std::string person;
};

// Of the days from first to last, by local time, struck steps among them. Reads those days and the
// jobs they name, whatever else there is.
[[nodiscard]] std::vector<WorkDone> loadWork(const RecordStore& store, const Clock& clock,
                                             Day first, Day last);

// What sets at this moment, or has set and nobody has seen to it, of the last days; the next to
// end first.
struct SettingWork {
    Setting setting;
    std::string job;
    std::string book;
    [[nodiscard]] bool isOver(Instant now) const { return setting.endsAt <= now; }
};
[[nodiscard]] std::vector<SettingWork> loadSettings(const RecordStore& store, Instant now);

// Of standing steps only; the most first, then by name.
struct HoursOf {
    std::string name;
    std::string also{}; // of a job: its book
    Minutes minutes{0};
    std::size_t steps = 0;
};
[[nodiscard]] Minutes minutesOf(std::span<const WorkDone> work);
[[nodiscard]] std::vector<HoursOf> hoursByPerson(std::span<const WorkDone> work);
[[nodiscard]] std::vector<HoursOf> hoursByJob(std::span<const WorkDone> work);

// Each person's hours in each job: a time sheet.
struct PersonInJobs {
    std::string person;
    Minutes minutes{0};
    std::vector<HoursOf> jobs{};
};
[[nodiscard]] std::vector<PersonInJobs> timeSheet(std::span<const WorkDone> work);

// Monday of its week.
[[nodiscard]] Day weekBegin(Day day);
[[nodiscard]] Day dayAfter(Day day, int days);

} // namespace headcap::core
