// The records of photographs that were kept: one change for all of a batch.
#pragma once

#include "app/photo/photo_intake.h"
#include "app/session/session.h"

namespace headcap::app::photo {

struct Recorded {
    bool isWhole = false; // false: the storage failed under it, and they may be taken in again
    std::optional<core::Id<core::Photograph>> first{};
};

// Records what was kept, behind the last of its role, and says what was taken in and what was
// not, each for its reason. What the job already has is not taken in again.
Recorded recordKept(Session& session, const IntakeResult& result, const IntakePlace& place);

} // namespace headcap::app::photo
