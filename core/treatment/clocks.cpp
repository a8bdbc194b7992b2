#include "core/treatment/clocks.h"

#include <algorithm>

#include "core/treatment/work_title.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

const BenchClock* find(const JobFile& file, const Id<BenchClock>& id) {
    const auto found = std::ranges::find(file.clocks, id, &BenchClock::id);
    return found == file.clocks.end() ? nullptr : &*found;
}

bool isSameWork(const BenchClock& clock, const ClockStart& start) {
    return clock.line || start.line
               ? clock.line == start.line
               : clock.who == start.who && clock.technique == start.technique &&
                     clock.place == start.place;
}

std::vector<const BenchClock*> sorted(std::vector<const BenchClock*> clocks) {
    std::ranges::stable_sort(clocks, {}, &BenchClock::startedAt);
    return clocks;
}

} // namespace

ClockStart clockFor(const ProposalLine& line, std::optional<Id<Person>> who) {
    return {.who = who, .line = line.id, .technique = line.technique, .place = line.place};
}

tl::expected<Change, ClockProblem> startClock(const JobFile& file, const ClockStart& start,
                                              Instant now, IdSource& ids) {
    if (!start.line && start.technique.empty() && start.place.empty()) {
        return tl::unexpected(ClockProblem::nothingSaid);
    }
    for (const BenchClock* running : runningClocks(file)) {
        if (isSameWork(*running, start)) {
            return tl::unexpected(ClockProblem::alreadyRuns);
        }
    }
    const BenchClock clock{.id = ids.next<BenchClock>(),
                           .job = file.job.id,
                           .who = start.who,
                           .line = start.line,
                           .technique = start.technique,
                           .place = start.place,
                           .startedAt = now,
                           .step = std::nullopt};
    Change change{.sentence = "Clock started: " + clockTitle(clock, file.techniques),
                  .who = start.who};
    change.add(clock);
    return change;
}

tl::expected<Change, ClockProblem> stopClock(const JobFile& file, const Id<BenchClock>& id,
                                             Instant now) {
    const BenchClock* clock = find(file, id);
    if (clock == nullptr) {
        return tl::unexpected(ClockProblem::notThere);
    }
    if (clock->stoppedAt) {
        return tl::unexpected(ClockProblem::notRunning);
    }
    BenchClock stopped = *clock;
    stopped.stoppedAt = std::max(now, clock->startedAt);
    Change change{.sentence = "Clock stopped: " + clockTitle(*clock, file.techniques) + ", " +
                              minutesText(ranFor(stopped, now)),
                  .who = clock->who};
    change.update(stopped, file.revisionOf(refOf(id)));
    return change;
}

tl::expected<Change, ClockProblem> dropClock(const JobFile& file, const Id<BenchClock>& id) {
    const BenchClock* clock = find(file, id);
    if (clock == nullptr) {
        return tl::unexpected(ClockProblem::notThere);
    }
    if (clock->step) {
        return tl::unexpected(ClockProblem::alreadyTaken);
    }
    Change change{.sentence = "Clock dropped: " + clockTitle(*clock, file.techniques),
                  .who = clock->who};
    change.remove(*clock, file.revisionOf(refOf(id)));
    return change;
}

Step stepOf(const JobFile& file, const BenchClock& clock, const Id<Person>& who, Instant now,
            IdSource& ids) {
    Step step{.id = ids.next<Step>(),
              .job = file.job.id,
              .part = std::nullopt,
              .at = clock.startedAt,
              .who = clock.who.value_or(who),
              .technique = clock.technique,
              .place = clock.place,
              .description = clock.note,
              .minutes = ranFor(clock, now),
              .line = clock.line,
              .corrects = std::nullopt,
              .struckBy = std::nullopt};
    if (const Technique* technique = file.techniques.named(clock.technique)) {
        step.kind = technique->kind;
        step.reversibility = technique->reversibility;
        step.undoing = technique->undoing;
    }
    const auto line = std::ranges::find_if(
        file.lines, [&](const ProposalLine& one) { return clock.line == one.id; });
    if (line != file.lines.end() && step.technique.empty() && step.description.empty()) {
        step.description = line->description;
    }
    return step;
}

void giveTo(Change& change, const JobFile& file, const BenchClock& clock, const Id<Step>& step,
            Instant now) {
    BenchClock given = clock;
    given.stoppedAt = given.stoppedAt.value_or(std::max(now, given.startedAt));
    given.step = step;
    change.update(given, file.revisionOf(refOf(clock.id)));
}

Minutes ranFor(const BenchClock& clock, Instant now) {
    const Instant end = clock.stoppedAt.value_or(now);
    if (end <= clock.startedAt) {
        return Minutes{0};
    }
    return std::max(Minutes{1}, std::chrono::round<Minutes>(end - clock.startedAt));
}

bool isForgotten(const BenchClock& clock, Instant now) {
    return clock.stoppedAt.value_or(now) - clock.startedAt > kLongestStretch;
}

std::vector<const BenchClock*> runningClocks(const JobFile& file) {
    std::vector<const BenchClock*> clocks;
    for (const BenchClock& clock : file.clocks) {
        if (!clock.stoppedAt) {
            clocks.push_back(&clock);
        }
    }
    return sorted(std::move(clocks));
}

std::vector<const BenchClock*> clocksToLog(const JobFile& file) {
    std::vector<const BenchClock*> clocks;
    for (const BenchClock& clock : file.clocks) {
        if (clock.stoppedAt && !clock.step) {
            clocks.push_back(&clock);
        }
    }
    return sorted(std::move(clocks));
}

const BenchClock* runningFor(const JobFile& file, const Id<ProposalLine>& line) {
    for (const BenchClock* clock : runningClocks(file)) {
        if (clock->line == line) {
            return clock;
        }
    }
    return nullptr;
}

std::string clockTitle(const BenchClock& clock, const TechniquesInForce& techniques) {
    const std::string title = techniques.nameOf(clock.technique);
    if (clock.place.empty()) {
        return title.empty() ? "work" : title;
    }
    return workTitle(title, clock.place);
}

} // namespace headcap::core
