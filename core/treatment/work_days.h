// The bench log as a reader wants it: by day, a correction beside what it corrects; and the hours
// of each person.
#pragma once

#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

struct WorkDay {
    Day day;
    std::vector<const Step*> steps{}; // struck ones among them
    Minutes minutes{0};               // of those that stand
};

// In order of time; a correction of the same day follows the step it corrects.
[[nodiscard]] std::vector<WorkDay> workDays(const JobFile& file, const Clock& clock);

// The step that says a struck one rightly; none where it was only struck.
[[nodiscard]] const Step* correctionOf(const JobFile& file, const Step& struck);

struct PersonHours {
    Id<Person> who;
    Minutes minutes{0};
};
// Of standing steps, the most first.
[[nodiscard]] std::vector<PersonHours> hoursByPerson(const JobFile& file);

} // namespace headcap::core
