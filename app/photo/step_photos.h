// Photographs put to the steps they were taken in, by the time their camera wrote into them.
#pragma once

#include <vector>

#include "app/session/session.h"
#include "core/photo/photo_steps.h"

namespace headcap::app::photo {

struct PutToSteps {
    int put = 0;
    int undecided = 0; // could be of several steps: a person says which
    // ", 2 of them put to their step by their time"; empty where there is nothing to say.
    [[nodiscard]] QString words() const;
};

// Those that are being taken in for the job name their step where it is plain.
PutToSteps putToSteps(Session& session, const core::Id<core::Job>& job,
                      std::vector<core::Photograph>& photographs);

// Those of the job that belong to nothing yet and were taken in this step, which has just been
// logged; as a change of its own, said in one line with `said` before it.
void putToNewStep(Session& session, const core::Id<core::Step>& step, const QString& said);

} // namespace headcap::app::photo
