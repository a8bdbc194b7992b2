#include "core/custody/first_work.h"

#include "core/custody/job_states.h"
#include "core/treatment/approval.h"
#include "core/treatment/bench_log.h"

namespace headcap::core {
namespace {

// When the job came to the state it is in.
std::optional<Instant> reachedAt(const JobFile& file) {
    std::optional<Instant> latest;
    for (const StateChange& change : file.stateChanges) {
        if (change.toState == file.job.state && (!latest || change.at > *latest)) {
            latest = change.at;
        }
    }
    return latest;
}

bool isPastTheBench(JobState state) {
    return state == JobState::passed || state == JobState::reported;
}

} // namespace

bool bringsToTheBench(const JobFile& file, StepKind kind, Instant begun) {
    if (!isWorkOnTheBook(kind)) {
        return false;
    }
    if (file.job.state == JobState::approved) {
        return true;
    }
    const auto since = reachedAt(file);
    return isPastTheBench(file.job.state) && (!since || begun >= *since);
}

void bringToTheBench(Change& change, const JobFile& file, const Step& step, IdSource& ids) {
    if (!bringsToTheBench(file, step.kind, step.at)) {
        return;
    }
    const std::string why = isPastTheBench(file.job.state)
                                ? "worked on again: " + stepTitle(step, file.techniques)
                                : std::string{};
    const auto moved =
        changeState(file.job, file.revisionOf(refOf(file.job.id)),
                    {.to = JobState::atTheBench, .who = step.who, .at = step.at, .why = why}, ids);
    if (moved) {
        change.sentence += "; " + moved->sentence;
        change.writes.insert(change.writes.end(), moved->writes.begin(), moved->writes.end());
    }
}

} // namespace headcap::core
