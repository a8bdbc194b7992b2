#include "core/report/day_sheet.h"

#include <array>

#include <fmt/format.h>

#include "core/report/writing.h"
#include "core/treatment/bench_log.h"
#include "core/values/english.h"
#include "core/values/spoken_time.h"

namespace headcap::core {
namespace {

using report::addOr;
using report::bold;
using report::group;
using report::row;
using report::told;

std::string minutes(Minutes spent) {
    return spent > Minutes{0} ? toText(spent) : "not noted";
}

Section stepsOf(const DayOfWork& day, const DaySheetNames& names) {
    Section section{.key = "day", .title = "Steps"};
    Table table{.columns = {{"Begun", 2},
                            {"Job", 3},
                            {"Book", 5},
                            {"What was done", 7},
                            {"By", 3},
                            {"Took", 2, true}}};
    for (const WorkDone& one : day.work) {
        TableRow made =
            row({names.clockText(one.step.at), one.job, one.book, workText(one, names.techniques),
                 one.person, minutes(one.step.minutes)},
                refOf(one.step.id));
        made.struck = one.step.struckAt.has_value();
        table.rows.push_back(std::move(made));
    }
    if (!day.work.empty()) {
        TableRow all = row({"In all", "", "", "", "", ""});
        all.cells.back() = bold(toText(minutesOf(day.work)));
        all.kind = TableRow::Kind::total;
        table.rows.push_back(std::move(all));
    }
    addOr(section, std::move(table), "Nothing was logged on this day.");
    return section;
}

Table hoursTable(std::string first, const std::vector<HoursOf>& hours) {
    Table table{
        .columns = {{std::move(first), 3}, {"", 6}, {"Steps", 2, true}, {"Hours", 2, true}}};
    for (const HoursOf& one : hours) {
        table.rows.push_back(
            row({one.name, one.also, std::to_string(one.steps), toText(one.minutes)}));
    }
    return table;
}

Section sumsOf(const DayOfWork& day) {
    Section section{.key = "sums", .title = "By person and by job"};
    addOr(section, hoursTable("Person", hoursByPerson(day.work)), "Nobody logged anything.");
    if (!day.work.empty()) {
        section.blocks.emplace_back(hoursTable("Job", hoursByJob(day.work)));
    }
    return section;
}

// "Wednesday 2 December 2026".
std::string fullDayText(Day day) {
    static constexpr std::array<std::string_view, 7> kDays{
        "Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"};
    const std::chrono::weekday weekday{std::chrono::sys_days{day}};
    return fmt::format("{} {}", kDays[weekday.c_encoding()], dayText(day));
}

Section settingsOf(const DayOfWork& day, const DaySheetNames& names, const Clock& clock) {
    Section section{.key = "settings", .title = "Setting"};
    Table table{.columns = {{"Job", 3}, {"Book", 5}, {"What", 7}, {"Until", 4}}};
    for (const SettingWork& one : day.settings) {
        const Day until = clock.dayOf(one.setting.endsAt);
        std::string when = names.clockText(one.setting.endsAt);
        if (until != day.day) {
            when += ", " + fullDayText(until);
        }
        table.rows.push_back(row({one.job, one.book, one.setting.what,
                                  one.isOver(clock.now()) ? "over since " + when : when},
                                 refOf(one.setting.id)));
    }
    addOr(section, std::move(table), "Nothing is setting.");
    return section;
}

Section periodOf(const DayOfWork& day) {
    Section section{.key = "period",
                    .title =
                        fmt::format("Hours from {} to {}", dayText(day.from), dayText(day.to))};
    Table table{.columns = {{"Job", 3}, {"Book", 8}, {"Hours", 2, true}}};
    for (const PersonInJobs& person : timeSheet(day.period)) {
        table.rows.push_back(group(person.person, {}, toText(person.minutes)));
        for (const HoursOf& job : person.jobs) {
            table.rows.push_back(row({job.name, job.also, toText(job.minutes)}));
        }
    }
    addOr(section, std::move(table), "Nothing was logged in these days.");
    return section;
}

} // namespace

DayOfWork loadDay(const RecordStore& store, const Clock& clock, Day day, Day from, Day to) {
    return {.day = day,
            .work = loadWork(store, clock, day, day),
            .settings = day == clock.today() ? loadSettings(store, clock.now())
                                             : std::vector<SettingWork>{},
            .from = from,
            .to = to,
            .period = loadWork(store, clock, from, to)};
}

std::string workText(const WorkDone& work, const TechniquesInForce& techniques) {
    const Step& step = work.step;
    const std::string title = stepTitle(step, techniques);
    return told({step.kind == StepKind::incident ? "Incident" : "",
                 step.description == title ? "" : title, step.description,
                 step.struckAt ? "struck: " + step.struckWhy : ""});
}

Document daySheet(const DayOfWork& day, const DaySheetNames& names, const Clock& clock) {
    Document document{.title = "The day's work",
                      .subtitle = dayText(day.day),
                      .date = clock.today(),
                      .isDraft = false};
    document.letterhead.name = names.workshop;
    document.sections = {stepsOf(day, names), sumsOf(day)};
    if (day.day == clock.today()) {
        document.sections.push_back(settingsOf(day, names, clock));
    }
    if (day.from != day.to || day.from != day.day) { // of the day itself it stands above
        document.sections.push_back(periodOf(day));
    }
    return document;
}

} // namespace headcap::core
