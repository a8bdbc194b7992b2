// When a follow-up is due: on its day, until it is done; overdue from the day after.
#pragma once

#include "core/custody/custody.h"

namespace headcap::core {

[[nodiscard]] inline bool isDue(const FollowUp& followUp, Day today) {
    return !followUp.doneOn && followUp.dueOn && *followUp.dueOn <= today;
}

[[nodiscard]] inline bool isOverdue(const FollowUp& followUp, Day today) {
    return isDue(followUp, today) && *followUp.dueOn < today;
}

} // namespace headcap::core
