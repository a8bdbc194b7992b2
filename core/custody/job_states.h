// The states of a job: which change is allowed, and which needs a word why. Going back is allowed
// and recorded. And the numbers people see: the next one after the greatest in use.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "core/record/change.h"

namespace headcap::core {

enum class StateProblem {
    sameState,
    notAllowed,   // no way leads from the one to the other
    reasonMissing // going back, or out of the order of the work, needs a word why
};

enum class StateWay { none, forward, withReason };

[[nodiscard]] StateWay wayBetween(JobState from, JobState to);
// Those a job may go to, in the order of the work.
[[nodiscard]] std::vector<JobState> statesAfter(JobState from);
// In the house: neither returned nor declined nor withdrawn.
[[nodiscard]] bool isInTheHouse(JobState state);
// Whether the work has come this far: passed, reported and returned are past the bench. A job on
// hold, declined or withdrawn has come nowhere by its state alone.
[[nodiscard]] bool hasReached(JobState state, JobState stage);

// "at the bench".
[[nodiscard]] std::string_view wordsFor(JobState state);

struct StateMove {
    JobState to;
    std::optional<Id<Person>> who;
    Instant at;
    std::string why{};
};

[[nodiscard]] tl::expected<Change, StateProblem> changeState(const Job& job, Revision read,
                                                             const StateMove& move, IdSource& ids);

// "2026-015" after "2026-014"; "2026-001" where the year has none. After 999 come A00 to Z99, so
// that the order of the text stays the order of the numbers; nothing after the last.
[[nodiscard]] std::optional<std::string>
nextJobNumber(const std::optional<std::string>& greatestOfYear, std::chrono::year year);
// "26-015", in the same way.
[[nodiscard]] std::optional<std::string>
nextLotNumber(const std::optional<std::string>& greatestOfYear, std::chrono::year year);
// What RecordStore::greatest is asked with: "2026-", "26-".
[[nodiscard]] std::string jobNumberPrefix(std::chrono::year year);
[[nodiscard]] std::string lotNumberPrefix(std::chrono::year year);

} // namespace headcap::core
