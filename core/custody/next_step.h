// The next thing to do about a job, computed from what its record still lacks, and the group of
// the worklist it stands in.
#pragma once

#include <optional>
#include <string>

#include "core/custody/page.h"
#include "core/record/job_file.h"
#include "core/values/time.h"

namespace headcap::core {

enum class WorklistGroup { needsYou, setting, atWork, waitingForOwner, toBeReturned, finished };

template <>
struct EnumNames<WorklistGroup> {
    static constexpr std::array<std::string_view, 6> kNames{
        "needs_you", "setting", "at_work", "waiting_for_owner", "to_be_returned", "finished"};
};

struct NextStep {
    WorklistGroup group = WorklistGroup::needsYou;
    std::string sentence; // "Write the proposal."
    Page page = Page::book;
    std::optional<Day> due{};
    bool overdue = false;
    std::optional<Instant> setsUntil{}; // the latest of its setting times still running
    std::optional<Minutes> settingLeft{};
};

[[nodiscard]] NextStep nextStep(const JobFile& file, const Clock& clock);

} // namespace headcap::core
