// The jobs in the house as slips, sorted by what they need. Pure: from the store and the clock.
#pragma once

#include <array>
#include <vector>

#include "app/session/session.h"
#include "app/shell/slip.h"
#include "core/custody/next_step.h"

namespace headcap::app {

// The groups of the worklist, and follow-ups of jobs no longer in the house after them.
inline constexpr std::size_t kSlipGroups = core::EnumNames<core::WorklistGroup>::kNames.size() + 1;
inline constexpr std::size_t kFollowUps = kSlipGroups - 1;

struct Worklist {
    std::array<std::vector<SlipWords>, kSlipGroups> groups;
    int inTheHouse = 0;
    QString backup{}; // a sentence where one outside is wanted
};

struct Due {
    QString words; // "due 3 March", "overdue 2 days"; empty: no day was said
    bool isLate = false;
};
[[nodiscard]] Due dueOf(const std::optional<core::Day>& day, core::Day today);

[[nodiscard]] Worklist worklistOf(const core::Stores& stores, const core::Clock& clock);
[[nodiscard]] QString groupHeading(std::size_t group);

} // namespace headcap::app
