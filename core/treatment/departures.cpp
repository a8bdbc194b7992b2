#include "core/treatment/departures.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/custody/job_states.h"
#include "core/treatment/approval.h"
#include "core/treatment/bench_log.h"
#include "core/treatment/cost.h"
#include "core/treatment/techniques.h"
#include "core/treatment/totals.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

// Told of a change by that day or after it: both settle it.
const Notice* noticeOfChange(const JobFile& file) {
    const auto found = std::ranges::find(file.notices, NoticeSubject::change, &Notice::subject);
    return found == file.notices.end() ? nullptr : &*found;
}

void addDoneNotApproved(const JobFile& file, const Clock& clock, std::vector<Departure>& all) {
    for (const Step* step : unapprovedSteps(file)) {
        const RecordRef ref = refOf(step->id);
        all.push_back({DepartureKind::doneNotApproved, ref,
                       fmt::format("{}, on {}: no line that the owner approved covers it.",
                                   capitalised(stepTitle(*step, file.techniques)),
                                   dayText(clock.dayOf(step->at))),
                       explanationOf(file, ref, ruleOf(DepartureKind::doneNotApproved)),
                       noticeOfChange(file)});
    }
}

void addApprovedNotDone(const JobFile& file, std::vector<Departure>& all) {
    if (!hasReached(file.job.state, JobState::passed)) {
        return;
    }
    for (const ProposalLine* line : openLines(file)) {
        const RecordRef ref = refOf(line->id);
        all.push_back({DepartureKind::approvedNotDone, ref,
                       fmt::format("{} was approved, and no step carries it out.",
                                   capitalised(lineTitle(*line, file.techniques))),
                       explanationOf(file, ref, ruleOf(DepartureKind::approvedNotDone)), nullptr});
    }
}

void addOverLimit(const JobFile& file, std::vector<Departure>& all) {
    const Decision* decision = approval(file);
    const auto done = costAsDone(file);
    if (decision == nullptr || !decision->limit || !done ||
        done->currency != decision->limit->currency || done->minor <= decision->limit->minor) {
        return;
    }
    const RecordRef ref = refOf(decision->id);
    all.push_back({DepartureKind::overLimit, ref,
                   fmt::format("The work done comes to {}, above the owner's limit of {}.",
                               toText(*done), toText(*decision->limit)),
                   explanationOf(file, ref, ruleOf(DepartureKind::overLimit)),
                   noticeOfChange(file)});
}

// A line's price, and more where it took longer than it says.
std::optional<Money> lineAsDone(const JobFile& file, const ProposalLine& line) {
    const LineWork work = workedOn(file, line);
    if (work.steps == 0) {
        return std::nullopt;
    }
    const bool hasRate = file.workshop && file.workshop->hourlyRate;
    std::optional<Money> cost = line.price;
    if (cost && line.minutes > Minutes{0} && work.minutes > line.minutes) {
        cost = inProportion(*cost, work.minutes, line.minutes);
    } else if (!cost && hasRate) {
        cost = priceAt(*file.workshop->hourlyRate, work.minutes);
    }
    if (cost && line.materialsCost) {
        cost = sum(*cost, *line.materialsCost);
    }
    return cost ? cost : line.materialsCost;
}

} // namespace

std::string ruleOf(DepartureKind kind) {
    switch (kind) {
    case DepartureKind::doneNotApproved:
        return "done_not_approved";
    case DepartureKind::approvedNotDone:
        return "approved_not_done";
    case DepartureKind::overLimit:
        break;
    }
    return "over_limit";
}

std::vector<Departure> departures(const JobFile& file, const Clock& clock) {
    std::vector<Departure> all;
    addDoneNotApproved(file, clock, all);
    addApprovedNotDone(file, all);
    addOverLimit(file, all);
    return all;
}

std::optional<Money> costAsDone(const JobFile& file) {
    std::optional<Money> total;
    const auto add = [&](const std::optional<Money>& cost) {
        if (cost) {
            total = total ? sum(*total, *cost).value_or(*total) : *cost;
        }
    };
    for (const ProposalLine* line : approvedLines(file)) {
        add(lineAsDone(file, *line));
    }
    if (file.workshop && file.workshop->hourlyRate) {
        for (const Step* step : unapprovedSteps(file)) {
            add(priceAt(*file.workshop->hourlyRate, step->minutes));
        }
    }
    return total;
}

const Explanation* explanationOf(const JobFile& file, const RecordRef& subject,
                                 const std::string& rule) {
    const auto found = std::ranges::find_if(file.explanations, [&](const Explanation& one) {
        return one.subject == subject && (one.rule.empty() || one.rule == rule) &&
               !one.text.empty();
    });
    return found == file.explanations.end() ? nullptr : &*found;
}

Change explain(const JobFile& file, const RecordRef& subject, const std::string& rule,
               const std::string& text, std::optional<Id<Person>> who, Instant now, IdSource& ids) {
    Change change{.sentence = "Explained: " + sentence(text), .who = who};
    change.add(Explanation{.id = ids.next<Explanation>(),
                           .job = file.job.id,
                           .subject = subject,
                           .rule = rule,
                           .text = text,
                           .who = who,
                           .at = now});
    return change;
}

} // namespace headcap::core
