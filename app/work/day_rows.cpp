#include "app/work/day_rows.h"

#include <QCoreApplication>

#include "app/session/words.h"
#include "core/treatment/bench_log.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("day", text);
}

QString spent(core::Minutes minutes) {
    return minutes > core::Minutes{0} ? fromCore(core::toText(minutes)) : QStringLiteral("—");
}

TableRow heading(const QString& words, const QString& right = {}) {
    return {.title = {words, Face::heading, Ink::ink},
            .right = {right, Face::smallStrong, Ink::ink}};
}

// A person, or a job: its number stands where a step has its time.
TableRow hoursRow(const core::HoursOf& hours, core::IdSource& ids) {
    const QString name = fromCore(hours.name);
    const QString also = fromCore(hours.also);
    return {.id = ids.next<core::Job>().uuid(),
            .title = {also.isEmpty() ? name : also, also.isEmpty() ? Face::body : Face::formula,
                      Ink::ink},
            .mark = also.isEmpty() ? QString{} : name,
            .middle = {{}, {counted(static_cast<int>(hours.steps), tr("%1 step"), tr("%1 steps"))}},
            .right = {spent(hours.minutes), Face::small, Ink::ink}};
}

} // namespace

std::vector<TableRow> stepRows(const core::DayOfWork& day,
                               const core::TechniquesInForce& techniques) {
    std::vector<TableRow> rows;
    for (const core::WorkDone& one : day.work) {
        const core::Step& step = one.step;
        const QString what = fromCore(core::stepTitle(step, techniques));
        const QString description = fromCore(step.description);
        TableRow row{
            .id = step.id.uuid(),
            .title = {what.isEmpty() ? words(step.kind) : what, Face::body, Ink::ink},
            .mark = clockTime(step.at),
            .middle = {{dotted({fromCore(one.job), fromCore(one.book)}), Face::formula, Ink::ink},
                       {fromCore(one.person), Face::small, Ink::ink}},
            .right = {step.struckAt ? QStringLiteral("—") : spent(step.minutes), Face::small,
                      Ink::ink},
            .below = {step.struckAt         ? tr("struck: %1").arg(fromCore(step.struckWhy))
                      : description == what ? QString{}
                                            : description},
            .isStruck = step.struckAt.has_value()};
        if (step.kind == core::StepKind::incident) {
            row.below = {dotted({words(step.kind), row.below.text}), Face::smallStrong, Ink::open};
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<TableRow> sumRows(const core::DayOfWork& day, core::IdSource& ids) {
    std::vector<TableRow> rows;
    if (day.work.empty()) {
        return rows;
    }
    rows.push_back(heading(tr("By person"), spent(core::minutesOf(day.work))));
    for (const core::HoursOf& one : core::hoursByPerson(day.work)) {
        rows.push_back(hoursRow(one, ids));
    }
    rows.push_back(heading(tr("By job")));
    for (const core::HoursOf& one : core::hoursByJob(day.work)) {
        rows.push_back(hoursRow(one, ids));
    }
    return rows;
}

std::vector<TableRow> settingRows(const core::DayOfWork& day, const core::Clock& clock) {
    std::vector<TableRow> rows;
    for (const core::SettingWork& one : day.settings) {
        const core::Instant until = one.setting.endsAt;
        const core::Day on = clock.dayOf(until);
        const QString when =
            on == day.day ? clockTime(until)
                          : QStringLiteral("%1, %2").arg(clockTime(until), shortDay(on, day.day));
        const bool isOver = one.isOver(clock.now());
        rows.push_back(
            {.id = one.setting.id.uuid(),
             .title = {fromCore(one.setting.what), Face::body, Ink::ink},
             .middle = {{dotted({fromCore(one.job), fromCore(one.book)}), Face::formula, Ink::ink},
                        {isOver ? tr("over since %1").arg(when) : tr("until %1").arg(when),
                         Face::small, isOver ? Ink::open : Ink::ink}}});
    }
    return rows;
}

std::vector<TableRow> hourRows(const core::DayOfWork& day, core::IdSource& ids) {
    std::vector<TableRow> rows;
    for (const core::PersonInJobs& person : core::timeSheet(day.period)) {
        rows.push_back(heading(fromCore(person.person), spent(person.minutes)));
        for (const core::HoursOf& job : person.jobs) {
            rows.push_back(hoursRow(job, ids));
        }
    }
    return rows;
}

} // namespace headcap::app
