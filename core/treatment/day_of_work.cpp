#include "core/treatment/day_of_work.h"

#include <algorithm>
#include <map>
#include <optional>

#include "core/record/job_file.h"

namespace headcap::core {
namespace {

using std::chrono::days;
using std::chrono::sys_days;

// Names of jobs, books and people, each read once.
class Names {
public:
    explicit Names(const RecordStore& store) : m_store(store) {}

    struct Named {
        std::string job;
        std::string book;
    };
    const Named& of(const Id<Job>& id) {
        const auto known = m_jobs.find(id);
        if (known != m_jobs.end()) {
            return known->second;
        }
        Named named;
        if (const auto job = find(m_store, id)) {
            named.job = job->record.number;
            if (const auto item = find(m_store, job->record.item)) {
                named.book = headingOf(item->record);
            }
        }
        return m_jobs.emplace(id, std::move(named)).first->second;
    }
    const std::string& of(const Id<Person>& id) {
        const auto known = m_people.find(id);
        if (known != m_people.end()) {
            return known->second;
        }
        const auto person = find(m_store, id);
        return m_people.emplace(id, person ? person->record.name : std::string{}).first->second;
    }

private:
    const RecordStore& m_store;
    std::map<Id<Job>, Named> m_jobs;
    std::map<Id<Person>, std::string> m_people;
};

std::vector<HoursOf> sorted(std::map<std::string, HoursOf> all) {
    std::vector<HoursOf> hours;
    for (auto& [key, one] : all) {
        hours.push_back(std::move(one));
    }
    std::ranges::stable_sort(hours, std::ranges::greater{}, &HoursOf::minutes);
    return hours;
}

void count(HoursOf& into, const WorkDone& work) {
    into.minutes += work.step.minutes;
    ++into.steps;
}

} // namespace

std::vector<WorkDone> loadWork(const RecordStore& store, const Clock& clock, Day first, Day last) {
    // A day of any place on earth begins and ends within a day of that of UTC.
    const std::string from = isoText(Instant{sys_days{first} - days{1}});
    const std::string to = isoText(Instant{sys_days{last} + days{2}});
    Names names{store};
    std::vector<WorkDone> work;
    for (auto& found :
         typed<Step>(store.allBetween(RecordKind::step, fieldName(&Step::at), from, to))) {
        const Day day = clock.dayOf(found.record.at);
        if (day < first || day > last) {
            continue;
        }
        const auto& named = names.of(found.record.job);
        std::string person = names.of(found.record.who);
        work.push_back({std::move(found.record), named.job, named.book, std::move(person)});
    }
    return work;
}

std::vector<SettingWork> loadSettings(const RecordStore& store, Instant now) {
    constexpr days kRemembered{7};
    constexpr std::string_view kForever = "9999-12-31T23:59:59.999Z";
    Names names{store};
    std::vector<SettingWork> all;
    for (auto& found :
         typed<Setting>(store.allBetween(RecordKind::setting, fieldName(&Setting::endsAt),
                                         isoText(now - kRemembered), kForever))) {
        if (found.record.seenAt) {
            continue;
        }
        const auto step =
            found.record.step ? find(store, *found.record.step) : std::optional<Stored<Step>>{};
        if (step && step->record.struckAt) {
            continue;
        }
        const auto& named = names.of(found.record.job);
        all.push_back({std::move(found.record), named.job, named.book});
    }
    return all;
}

Minutes minutesOf(std::span<const WorkDone> work) {
    Minutes sum{0};
    for (const WorkDone& one : work) {
        sum += one.step.struckAt ? Minutes{0} : one.step.minutes;
    }
    return sum;
}

std::vector<HoursOf> hoursByPerson(std::span<const WorkDone> work) {
    std::map<std::string, HoursOf> all;
    for (const WorkDone& one : work) {
        if (!one.step.struckAt) {
            HoursOf& hours = all[one.step.who.text()];
            hours.name = one.person;
            count(hours, one);
        }
    }
    return sorted(std::move(all));
}

std::vector<HoursOf> hoursByJob(std::span<const WorkDone> work) {
    std::map<std::string, HoursOf> all;
    for (const WorkDone& one : work) {
        if (!one.step.struckAt) {
            HoursOf& hours = all[one.job];
            hours.name = one.job;
            hours.also = one.book;
            count(hours, one);
        }
    }
    return sorted(std::move(all));
}

std::vector<PersonInJobs> timeSheet(std::span<const WorkDone> work) {
    std::map<Id<Person>, std::vector<WorkDone>> byPerson;
    for (const WorkDone& one : work) {
        if (!one.step.struckAt) {
            byPerson[one.step.who].push_back(one);
        }
    }
    std::vector<PersonInJobs> sheet;
    for (const auto& [id, own] : byPerson) {
        sheet.push_back({own.front().person, minutesOf(own), hoursByJob(own)});
    }
    std::ranges::stable_sort(sheet, std::ranges::greater{}, &PersonInJobs::minutes);
    return sheet;
}

Day weekBegin(Day day) {
    const sys_days at{day};
    return Day{at - (std::chrono::weekday{at} - std::chrono::Monday)};
}

Day dayAfter(Day day, int count) {
    return Day{sys_days{day} + days{count}};
}

} // namespace headcap::core
