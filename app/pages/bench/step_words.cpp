#include "app/pages/bench/step_words.h"

#include <QCoreApplication>
#include <QLocale>

#include "app/session/dates.h"
#include "app/session/sentences.h"
#include "app/session/words.h"
#include "core/materials/shelf.h"
#include "core/treatment/work_days.h"
#include "core/values/english.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("log", text);
}

// A removal that does not say what became of what it took out.
bool owesFate(const core::Step& step) {
    const bool tookOut = step.kind == core::StepKind::removal || !step.removed.empty();
    return tookOut && step.removedFate.empty() && !step.struckAt;
}

TableCell belowOf(const core::JobFile& file, const core::Step& step, const core::Clock& clock) {
    const core::Day day = clock.dayOf(step.at);
    QStringList parts;
    if (const core::Step* old = file.step(step.corrects)) {
        parts << tr("corrects %1").arg(timeBeside(old->at, day, clock));
    }
    if (!step.description.empty()) {
        parts << fromCore(file.techniques.nameOf(step.technique));
    }
    const bool isNamed =
        step.kind == core::StepKind::uncovering || step.kind == core::StepKind::incident;
    if (isNamed && titleOf(file, step).compare(words(step.kind), Qt::CaseInsensitive) != 0) {
        parts << words(step.kind);
    }
    if (owesFate(step)) {
        parts << tr("what became of it?");
    } else if (!step.removedFate.empty()) {
        parts << (step.removed == step.description
                      ? fromCore(step.removedFate)
                      : tr("%1: %2").arg(fromCore(step.removed), fromCore(step.removedFate)));
    }
    const bool isOpen = owesFate(step) || step.kind == core::StepKind::incident;
    return {dotted(parts), Face::small, isOpen ? Ink::open : Ink::quiet};
}

TableCell materialsOf(const core::JobFile& file, const core::Step& step, const core::Clock& clock) {
    if (step.struckAt) {
        QString words = tr("struck: %1").arg(fromCore(step.struckWhy));
        if (const core::Step* rightly = core::correctionOf(file, step)) {
            words += tr("; see %1").arg(timeBeside(rightly->at, clock.dayOf(step.at), clock));
        }
        return {words};
    }
    QStringList used;
    for (const core::MaterialUse* use : file.usesOf(step)) {
        used << usedWords(file, *use);
    }
    return {used.isEmpty() ? QStringLiteral("—") : dotted(used)};
}

TableRow rowOf(const core::JobFile& file, const core::WorkDay& day, std::size_t at,
               const core::Clock& clock) {
    const core::Step& step = *day.steps[at];
    const bool isTied = at > 0 && step.corrects == day.steps[at - 1]->id;
    const bool isTimed = !step.struckAt && step.minutes > core::Minutes{0};
    return {
        .id = step.id.uuid(),
        .title = {titleOf(file, step), Face::body, Ink::ink},
        .mark = clockTime(step.at),
        .middle = {{fromCore(step.place), Face::formula, Ink::ink}, materialsOf(file, step, clock)},
        .right = {isTimed ? fromCore(core::toText(step.minutes)) : QStringLiteral("—")},
        .below = belowOf(file, step, clock),
        .isStruck = step.struckAt.has_value(),
        .isTied = isTied};
}

} // namespace

QString titleOf(const core::JobFile& file, const core::Step& step) {
    if (!step.description.empty()) {
        return fromCore(step.description);
    }
    const QString technique = fromCore(file.techniques.nameOf(step.technique));
    return technique.isEmpty() ? words(step.kind) : technique;
}

core::Instant endOf(const core::Step& step) {
    return step.at + step.minutes;
}

QString usedWords(const core::JobFile& file, const core::MaterialUse& use) {
    const core::Lot* lot = file.lot(use.lot);
    const core::Material* kind = lot == nullptr ? nullptr : file.material(lot->material);
    QStringList parts;
    if (lot != nullptr) {
        parts << fromCore(lot->number) << fromCore(kind != nullptr ? kind->name : lot->product);
    } else {
        parts << fromCore(use.material);
    }
    if (use.amount) {
        // A figure and its unit are not parted by the end of a line.
        parts << fromCore(core::toText(*use.amount)).replace(u' ', QChar::Nbsp);
    } else if (lot != nullptr && !use.material.empty()) {
        parts << fromCore("(" + use.material + ")");
    }
    parts.removeAll({});
    QString said = parts.join(QLatin1Char(' '));
    if (use.grainAtSpine != core::GrainAtSpine::notSaid) {
        said += tr(", grain %1").arg(words(use.grainAtSpine));
    }
    return said;
}

QString dayHeading(core::Day day, core::Day today) {
    return QLocale{QLocale::English}.toString(
        dateOf(day), day.year() == today.year() ? QStringLiteral("dddd d MMMM")
                                                : QStringLiteral("dddd d MMMM yyyy"));
}

QString adviceOf(const core::Technique* technique) {
    if (technique == nullptr) {
        return {};
    }
    QStringList parts;
    const auto add = [&](const QString& lead, const std::vector<std::string>& texts) {
        QStringList said;
        for (const std::string& text : texts) {
            said << fromCore(core::sentence(text)); // with one stop, whether or not it has its own
        }
        if (!said.isEmpty()) {
            parts << lead.arg(said.join(QLatin1Char(' ')));
        }
    };
    add(tr("First: %1"), technique->before);
    add(tr("Mind: %1"), technique->cautions);
    return parts.join(QLatin1Char('\n'));
}

QString timeBeside(core::Instant at, core::Day beside, const core::Clock& clock) {
    return clock.dayOf(at) == beside ? clockTime(at) : timeAndDay(at, clock);
}

QString timeAndDay(core::Instant at, const core::Clock& clock) {
    return QStringLiteral("%1, %2").arg(clockTime(at), shortDay(clock.dayOf(at), clock.today()));
}

std::vector<TableRow> logRows(const core::JobFile& file, const core::Clock& clock) {
    std::vector<TableRow> rows;
    for (const core::WorkDay& day : core::workDays(file, clock)) {
        const QString total =
            day.minutes > core::Minutes{0} ? fromCore(core::toText(day.minutes)) : QString{};
        rows.push_back({.title = {dayHeading(day.day, clock.today()), Face::heading, Ink::ink},
                        .right = {total}});
        for (std::size_t i = 0; i < day.steps.size(); ++i) {
            rows.push_back(rowOf(file, day, i, clock));
        }
    }
    return rows;
}

QString refusalOf(core::StepProblem problem, const core::LoggedStep& logged,
                  const core::Shelf& shelf) {
    const std::string unit = core::unitSentence(logged, shelf);
    return problem == core::StepProblem::unitDiffers && !unit.empty()
               ? tr("Not logged. %1").arg(fromCore(unit))
               : app::sentence(problem);
}

QString sentence(core::ClockProblem problem) {
    using Problem = core::ClockProblem;
    switch (problem) {
    case Problem::alreadyRuns:
        return tr("Its clock runs already.");
    case Problem::nothingSaid:
        return tr("Not started: say for what.");
    case Problem::notThere:
        return tr("That clock is not in this job.");
    case Problem::notRunning:
        return tr("That clock has been stopped already.");
    case Problem::alreadyTaken:
        return tr("Its minutes stand in a step of the log, and stay there.");
    }
    return {};
}

QString sentence(core::CheckProblem problem) {
    switch (problem) {
    case core::CheckProblem::unexplained:
        return tr("Not noted: say why the check was not made.");
    case core::CheckProblem::notAStep:
        return tr("That step is not in this job's log.");
    case core::CheckProblem::struck:
        return tr("That step is struck: it has no checks to answer.");
    }
    return {};
}

} // namespace headcap::app
