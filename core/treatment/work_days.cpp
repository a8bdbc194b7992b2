#include "core/treatment/work_days.h"

#include <algorithm>

namespace headcap::core {
namespace {

// Those that correct nothing of the same day, each with its corrections after it.
std::vector<const Step*> besideCorrected(const std::vector<const Step*>& steps) {
    const auto corrected = [&](const Step& step) {
        return std::ranges::find_if(steps, [&](const Step* other) {
                   return step.corrects == other->id;
               }) != steps.end();
    };
    std::vector<const Step*> ordered;
    const auto follow = [&](const Step& first) {
        for (const Step* at = &first; at != nullptr;) {
            ordered.push_back(at);
            const auto next = std::ranges::find_if(
                steps, [&](const Step* other) { return other->corrects == at->id; });
            at = next == steps.end() ? nullptr : *next;
        }
    };
    for (const Step* step : steps) {
        if (!corrected(*step)) {
            follow(*step);
        }
    }
    return ordered;
}

} // namespace

std::vector<WorkDay> workDays(const JobFile& file, const Clock& clock) {
    std::vector<const Step*> steps;
    for (const Step& step : file.steps) {
        steps.push_back(&step);
    }
    std::ranges::stable_sort(steps, [](const Step* a, const Step* b) {
        return a->at != b->at ? a->at < b->at : a->id < b->id;
    });
    std::vector<WorkDay> days;
    for (const Step* step : steps) {
        const Day day = clock.dayOf(step->at);
        if (days.empty() || days.back().day != day) {
            days.push_back({day});
        }
        days.back().steps.push_back(step);
        if (!step->struckAt) {
            days.back().minutes += step->minutes;
        }
    }
    for (WorkDay& day : days) {
        day.steps = besideCorrected(day.steps);
    }
    return days;
}

const Step* correctionOf(const JobFile& file, const Step& struck) {
    const auto found = std::ranges::find(file.steps, std::optional{struck.id}, &Step::corrects);
    return found == file.steps.end() ? nullptr : &*found;
}

std::vector<PersonHours> hoursByPerson(const JobFile& file) {
    std::vector<PersonHours> hours;
    for (const Step& step : file.steps) {
        if (step.struckAt) {
            continue;
        }
        const auto known = std::ranges::find(hours, step.who, &PersonHours::who);
        if (known == hours.end()) {
            hours.push_back({step.who, step.minutes});
        } else {
            known->minutes += step.minutes;
        }
    }
    std::ranges::stable_sort(hours, std::ranges::greater{}, &PersonHours::minutes);
    return hours;
}

} // namespace headcap::core
