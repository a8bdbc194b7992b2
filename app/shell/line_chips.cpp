#include "app/shell/line_chips.h"

#include <algorithm>

#include <QCoreApplication>
#include <QTime>

#include "app/session/actions.h"
#include "app/session/words.h"
#include "core/custody/first_work.h"
#include "core/custody/job_states.h"
#include "core/materials/conversion.h"
#include "core/treatment/approval.h"
#include "core/treatment/line_doubts.h"
#include "core/treatment/undoing.h"
#include "core/values/decimal.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("LineChips", text);
}

// The approved line that it carries out; work that none covers is said to be so.
void addApproved(std::vector<LineChip>& chips, const LineSaid& said) {
    const bool isWork = core::isWorkOnTheBook(said.read.kind);
    const auto lines = said.file == nullptr ? std::vector<const core::ProposalLine*>{}
                                            : core::approvedLines(*said.file);
    if (lines.empty() || !isWork || said.read.technique.empty()) {
        return;
    }
    const auto covers = [&](const core::ProposalLine* line) {
        return said.read.line ? *said.read.line == line->id
                              : line->technique == said.read.technique;
    };
    const auto found = std::ranges::find_if(lines, covers);
    if (found == lines.end()) {
        chips.push_back({tr("approved"), tr("no line covers it"), true});
    } else if (said.read.line && (*found)->place != said.read.place) {
        chips.push_back({tr("approved"), fromCore(core::lineTitle(**found, said.techniques))});
    }
}

// Work on what was passed already, or is not here.
void addState(std::vector<LineChip>& chips, const LineSaid& said) {
    if (said.file == nullptr || said.read.technique.empty() ||
        !core::isWorkOnTheBook(said.read.kind)) {
        return;
    }
    const core::JobState state = said.file->job.state;
    const core::Instant begun = said.end - said.read.minutes.value_or(core::Minutes{0});
    if (state != core::JobState::approved &&
        core::bringsToTheBench(*said.file, said.read.kind, begun)) {
        chips.push_back({tr("job"), tr("was %1, goes back to the bench").arg(words(state)), true});
    } else if (!core::isInTheHouse(state) || state == core::JobState::onHold) {
        chips.push_back({tr("job"), tr("is %1").arg(words(state)), true});
    }
}

void addTakenOut(std::vector<LineChip>& chips, const core::StepLine& read) {
    const core::TakenOut out = core::takenOutIn(read);
    if (!out.what.empty()) {
        chips.push_back({tr("taken out"), fromCore(out.what)});
    }
    if (!out.fate.empty() || read.kind == core::StepKind::removal) {
        chips.push_back({tr("became of it"), out.fate.empty() ? tr("not said") : fromCore(out.fate),
                         out.fate.empty()});
    }
}

void addUses(std::vector<LineChip>& chips, const LineSaid& said) {
    if (core::namesNoMaterial(said.read, said.context.techniques)) {
        chips.push_back({tr("material"), tr("none named"), true});
    }
    for (std::size_t i = 0; i < said.read.uses.size(); ++i) {
        const core::LineUse& use = said.read.uses[i];
        const core::Shelf& shelf = said.context.shelf;
        const core::Lot* lot = use.lot ? shelf.lot(*use.lot) : nullptr;
        QString text = lot != nullptr ? fromCore(core::lotName(*lot, shelf.material(lot->material)))
                                      : fromCore(use.material);
        if (use.amount) {
            text += QLatin1Char(' ') + fromCore(core::toText(*use.amount));
        } else if (lot != nullptr && !use.material.empty()) {
            text += QStringLiteral(", ") + fromCore(use.material);
        }
        if (use.isWasted) {
            text += tr(", wasted");
        }
        chips.push_back(
            {lot != nullptr ? tr("lot") : tr("material, no lot"), text, lot == nullptr});
        const core::Material* kind = lot == nullptr ? nullptr : shelf.material(lot->material);
        if (kind != nullptr && use.amount && !core::asCounted(*use.amount, *lot, *kind)) {
            chips.push_back(
                {fromCore(lot->number), tr("is counted in %1").arg(words(kind->unit)), true});
        }
        for (const core::FitnessPoint& point : said.fitness[i]) {
            chips.push_back({fromCore(lot->number), fromCore(point.sentence), true});
        }
    }
    for (const std::string& number : core::unknownLots(toCore(said.line), said.read)) {
        chips.push_back({tr("no such lot"), fromCore(number), true});
    }
    const std::string untrue = core::undoingDoubt(said.read, said.context);
    if (!untrue.empty()) {
        chips.push_back(
            {tr("undone how?"), tr("the usual sentence %1").arg(fromCore(untrue)), true});
    }
}

// "09:20".
QString clockText(core::Minutes sinceMidnight) {
    return QTime{0, 0}
        .addSecs(static_cast<int>(sinceMidnight.count()) * 60)
        .toString(QStringLiteral("HH:mm"));
}

void addWhen(std::vector<LineChip>& chips, const core::StepLine& read) {
    QStringList when;
    if (read.day) {
        when << fullDay(*read.day);
    }
    if (read.begins && read.ends) {
        when << tr("%1 to %2").arg(clockText(*read.begins), clockText(*read.ends));
    }
    if (!when.isEmpty()) {
        chips.push_back({tr("when"), when.join(QStringLiteral(", "))});
    }
}

// Where several may be the whole, all of them.
void addTime(std::vector<LineChip>& chips, const core::StepLine& read) {
    if (!read.minutes) {
        return;
    }
    QStringList times{fromCore(core::toText(*read.minutes))};
    for (const core::Minutes other : read.otherMinutes) {
        times << fromCore(core::toText(other));
    }
    if (read.minutesAreOfEach) {
        chips.push_back({tr("time in all?"), tr("%1 each").arg(times.front()), true});
        return;
    }
    const bool isClear = times.size() == 1;
    chips.push_back({isClear ? tr("time") : tr("which time?"), times.join(tr(" or ")), !isClear});
}

void addConditions(std::vector<LineChip>& chips, const core::StepLine& read) {
    QStringList conditions;
    if (read.temperatureTenthsC) {
        conditions << fromCore(core::decimalText(*read.temperatureTenthsC, 1)) +
                          QStringLiteral(" °C");
    }
    if (read.humidityPercent) {
        conditions << tr("%1 % RH").arg(*read.humidityPercent);
    }
    conditions << fromCore(read.concentration) << fromCore(read.pressure);
    if (read.grainAtSpine != core::GrainAtSpine::notSaid) {
        conditions << tr("grain %1").arg(words(read.grainAtSpine));
    }
    conditions.removeAll({});
    if (!conditions.isEmpty()) {
        chips.push_back({tr("at"), conditions.join(QStringLiteral(", "))});
    }
}

void addPerson(std::vector<LineChip>& chips, const LineSaid& said) {
    for (const core::Person& person : said.context.people) {
        if (said.who && person.id == *said.who) {
            chips.push_back({tr("by"), fromCore(person.name)});
        }
    }
    if (!said.who) {
        chips.push_back(
            {tr("by"), tr("nobody yet (%1)").arg(keyText(ActionId::choosePerson)), true});
    }
}

// What to mind, before Enter: of the technique, and of each lot.
void addCautions(std::vector<LineChip>& chips, const LineSaid& said) {
    if (const core::Technique* technique = said.techniques.named(said.read.technique)) {
        for (const std::string& caution : technique->cautions) {
            chips.push_back({tr("mind"), fromCore(caution), true});
        }
    }
    for (const core::LineUse& use : said.read.uses) {
        const core::Material* kind = use.lot ? said.context.shelf.materialOf(*use.lot) : nullptr;
        if (kind != nullptr && !kind->caution.empty()) {
            chips.push_back({fromCore(said.context.shelf.lot(*use.lot)->number),
                             fromCore(kind->caution), true});
        }
    }
}

} // namespace

std::vector<LineChip> chipsOf(const LineSaid& said) {
    const core::StepLine& read = said.read;
    std::vector<LineChip> chips;
    if (!read.technique.empty()) {
        chips.push_back({read.isDenied ? tr("not done") : tr("technique"),
                         fromCore(said.techniques.nameOf(read.technique)), read.isDenied});
    }
    if (!read.place.empty()) {
        chips.push_back({tr("place"), fromCore(read.place)});
    }
    if (const std::string absent = core::absentPlace(read, said.file); !absent.empty()) {
        chips.push_back({tr("no such place"), fromCore(absent), true});
    }
    addApproved(chips, said);
    addState(chips, said);
    addUses(chips, said);
    addTakenOut(chips, read);
    addWhen(chips, read);
    addTime(chips, read);
    if (read.sets) {
        chips.push_back({tr("sets"), fromCore(core::toText(*read.sets))});
    }
    addConditions(chips, read);
    if (!read.description.empty()) {
        chips.push_back({tr("note"), fromCore(read.description), read.technique.empty()});
    }
    addPerson(chips, said);
    addCautions(chips, said);
    return chips;
}

} // namespace headcap::app
