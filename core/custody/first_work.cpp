#include "core/custody/first_work.h"

#include "core/custody/job_states.h"

namespace headcap::core {

void bringToTheBench(Change& change, const JobFile& file, const Step& step, IdSource& ids) {
    const bool isWork = step.kind == StepKind::treatment || step.kind == StepKind::removal;
    if (file.job.state != JobState::approved || !isWork) {
        return;
    }
    const auto moved =
        changeState(file.job, file.revisionOf(refOf(file.job.id)),
                    {.to = JobState::atTheBench, .who = step.who, .at = step.at}, ids);
    if (moved) {
        change.sentence += "; " + moved->sentence;
        change.writes.insert(change.writes.end(), moved->writes.begin(), moved->writes.end());
    }
}

} // namespace headcap::core
