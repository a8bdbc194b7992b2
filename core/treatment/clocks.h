// Clocks at the bench: a touch starts one for a piece of work, another stops it, and a step takes
// its minutes. They stand in the record, so they run on when the program does not, and times are
// kept in UTC, so that no change of the clocks in spring or autumn adds or takes an hour.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "core/record/job_file.h"
#include "core/treatment/bench_log.h"

namespace headcap::core {

enum class ClockProblem {
    alreadyRuns, // for this line, or for the same work, by the same person
    nothingSaid, // neither a line nor a technique nor a place
    notThere,
    notRunning,
    alreadyTaken, // a step has its minutes
};

struct ClockStart {
    std::optional<Id<Person>> who;
    std::optional<Id<ProposalLine>> line;
    std::string technique{};
    std::string place{};
};

// For an approved line: with its technique and place.
[[nodiscard]] ClockStart clockFor(const ProposalLine& line, std::optional<Id<Person>> who);

[[nodiscard]] tl::expected<Change, ClockProblem>
startClock(const JobFile& file, const ClockStart& start, Instant now, IdSource& ids);
[[nodiscard]] tl::expected<Change, ClockProblem>
stopClock(const JobFile& file, const Id<BenchClock>& clock, Instant now);
// It was started by mistake: nothing was worked.
[[nodiscard]] tl::expected<Change, ClockProblem> dropClock(const JobFile& file,
                                                           const Id<BenchClock>& clock);

// The step that takes its minutes, to be completed and logged: begun when the clock was.
[[nodiscard]] Step stepOf(const JobFile& file, const BenchClock& clock, const Id<Person>& who,
                          Instant now, IdSource& ids);
// Written with the logging of that step.
void giveTo(Change& change, const JobFile& file, const BenchClock& clock, const Id<Step>& step,
            Instant now);

// To the nearest minute, and one at least; nothing where the machine's clock has been set back.
[[nodiscard]] Minutes ranFor(const BenchClock& clock, Instant now);
// Longer than anybody works at one thing on one day. Common practice, no standard: a working day of
// eight hours, and two to finish what can't be left.
inline constexpr std::chrono::hours kLongestStretch{10};
// It ran longer than that: it was perhaps forgotten.
[[nodiscard]] bool isForgotten(const BenchClock& clock, Instant now);

// Those that run, the first started first; and those stopped whose minutes no step has taken.
[[nodiscard]] std::vector<const BenchClock*> runningClocks(const JobFile& file);
[[nodiscard]] std::vector<const BenchClock*> clocksToLog(const JobFile& file);
// The one that runs for a line.
[[nodiscard]] const BenchClock* runningFor(const JobFile& file, const Id<ProposalLine>& line);

// "Tipping in, K5".
[[nodiscard]] std::string clockTitle(const BenchClock& clock, const TechniquesInForce& techniques);

} // namespace headcap::core
