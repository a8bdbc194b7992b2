// A step that is being written and not yet logged. It is kept by job in the settings of this
// machine, so that turning the page, closing the window or a crash after that loses nothing.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/session/settings.h"
#include "core/treatment/bench_log.h"

namespace headcap::app {

struct StepDraft {
    core::LoggedStep logged;
    std::string reason{};                              // of a correction
    std::optional<core::Id<core::BenchClock>> clock{}; // whose minutes it takes
    std::vector<core::StepCheck> checks{};

    [[nodiscard]] bool isCorrection() const { return logged.step.corrects.has_value(); }
};

void keepDraft(Settings& settings, const core::Id<core::Job>& job,
               const std::optional<StepDraft>& draft);
// Nothing where none is kept, or it can no longer be read.
[[nodiscard]] std::optional<StepDraft> keptDraft(const Settings& settings,
                                                 const core::Id<core::Job>& job);

// A blank step begun now; and one that takes the minutes of a clock.
[[nodiscard]] StepDraft newDraft(const core::Id<core::Job>& job, const core::Id<core::Person>& who,
                                 core::Instant now, core::IdSource& ids);
[[nodiscard]] StepDraft draftFrom(const core::JobFile& file, const core::BenchClock& clock,
                                  const core::Id<core::Person>& who, core::Instant now,
                                  core::IdSource& ids);
// A logged step as it stands, with new keys, to be said rightly.
[[nodiscard]] StepDraft correctionOf(const core::JobFile& file, const core::Step& step,
                                     core::IdSource& ids);

} // namespace headcap::app
