#include "app/shell/worklist.h"

#include <algorithm>

#include <QCoreApplication>

#include "app/keeping/backup_words.h"
#include "app/session/words.h"
#include "core/custody/next_step_file.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Worklist", text);
}

Ink inkOf(core::WorklistGroup group) {
    switch (group) {
    case core::WorklistGroup::needsYou:
        return Ink::ink; // madder is for what is late
    case core::WorklistGroup::setting:
    case core::WorklistGroup::atWork:
        return Ink::accent;
    case core::WorklistGroup::waitingForOwner:
        return Ink::open;
    case core::WorklistGroup::toBeReturned:
        return Ink::settled;
    case core::WorklistGroup::finished:
        return Ink::quiet;
    }
    return Ink::quiet;
}

QString nextWords(const core::NextStep& next, const core::Clock& clock) {
    if (next.group != core::WorklistGroup::setting || !next.setsUntil || !next.settingLeft) {
        return fromCore(next.sentence);
    }
    const core::Day day = clock.dayOf(*next.setsUntil);
    QString what = fromCore(next.sentence);
    what.chop(1); // its point
    const QString time = clockTime(*next.setsUntil);
    // Nobody counts the minutes till another day.
    return day == clock.today()
               ? tr("%1, until %2 · %3 left")
                     .arg(what, time, fromCore(core::toText(*next.settingLeft)))
               : tr("%1, until %2 %3").arg(what, shortDay(day, clock.today()), time);
}

} // namespace

Due dueOf(const std::optional<core::Day>& day, core::Day today) {
    if (!day) {
        return {};
    }
    const int days = core::daysBetween(today, *day);
    if (days < 0) {
        return {counted(-days, tr("overdue %1 day"), tr("overdue %1 days")), true};
    }
    if (days == 0) {
        return {tr("due today"), false};
    }
    return {tr("due %1").arg(shortDay(*day, today)), false};
}

QString groupHeading(std::size_t group) {
    static constexpr std::array<const char*, kSlipGroups> kHeadings{
        QT_TRANSLATE_NOOP("Worklist", "Needs you"),
        QT_TRANSLATE_NOOP("Worklist", "Setting"),
        QT_TRANSLATE_NOOP("Worklist", "At work"),
        QT_TRANSLATE_NOOP("Worklist", "Waiting for the owner"),
        QT_TRANSLATE_NOOP("Worklist", "To be returned"),
        QT_TRANSLATE_NOOP("Worklist", "Finished"),
        QT_TRANSLATE_NOOP("Worklist", "Follow up")};
    return tr(kHeadings[group]);
}

Worklist worklistOf(const core::Stores& stores, const core::Clock& clock) {
    Worklist made;
    const core::Day today = clock.today();
    std::vector<core::JobLine> lines = stores.jobs.inTheHouse();
    // What is due first stands first; what has no day, last.
    std::stable_sort(lines.begin(), lines.end(), [](const auto& a, const auto& b) {
        return a.due && (!b.due || *a.due < *b.due);
    });
    const core::TechniquesInForce techniques = core::loadTechniques(stores.records);
    for (const core::JobLine& line : lines) {
        const auto file = core::fileForNextStep(stores.records, line.id, techniques);
        if (!file) {
            continue;
        }
        ++made.inTheHouse;
        const core::NextStep next = core::nextStep(*file, clock);
        const Due due = dueOf(line.due, today);
        made.groups[static_cast<std::size_t>(next.group)].push_back(
            SlipWords{.job = line.id,
                      .number = fromCore(line.number),
                      .book = fromCore(line.title),
                      .owner = fromCore(line.owner),
                      .next = nextWords(next, clock),
                      .due = due.words,
                      .isLate = due.isLate,
                      .ink = inkOf(next.group)});
    }
    for (const auto& [line, followUp] : stores.jobs.dueFollowUps(today)) {
        const Due due = dueOf(followUp.dueOn, today);
        made.groups[kFollowUps].push_back(SlipWords{.job = line.id,
                                                    .number = fromCore(line.number),
                                                    .book = fromCore(line.title),
                                                    .owner = fromCore(line.owner),
                                                    .next = fromCore(followUp.what),
                                                    .due = due.words,
                                                    .isLate = due.isLate,
                                                    .ink = Ink::open});
    }
    made.backup = needWords(core::backupStanding(stores.upkeep, clock.now()), clock.now());
    return made;
}

} // namespace headcap::app
