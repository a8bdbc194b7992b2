// The records of photographs that were kept: one change for all of a batch.
#pragma once

#include "app/photo/photo_intake.h"
#include "app/session/session.h"

namespace headcap::app::photo {

// Records what was kept, behind the last of its role, and says what was taken in and what was
// not, each for its reason. What the job already has is not taken in again. Gives the first new
// one.
std::optional<core::Id<core::Photograph>> recordKept(Session& session, const IntakeResult& result,
                                                     const IntakePlace& place);

} // namespace headcap::app::photo
