// How steps of the log and what they used are said on screen.
#pragma once

#include <QString>

#include "app/form/ruled_table.h"
#include "core/record/job_file.h"
#include "core/treatment/bench_log.h"
#include "core/treatment/clocks.h"
#include "core/treatment/step_checks.h"
#include "core/values/time.h"

namespace headcap::app {

// What was done: the description, or else the technique.
[[nodiscard]] QString titleOf(const core::JobFile& file, const core::Step& step);
// When the work of it was done.
[[nodiscard]] core::Instant endOf(const core::Step& step);
// "31-006 wheat starch paste 3.1 g".
[[nodiscard]] QString usedWords(const core::JobFile& file, const core::MaterialUse& use);
// "Wednesday 5 March", with its year where that is not this one.
[[nodiscard]] QString dayHeading(core::Day day, core::Day today);
// What comes first and what to mind, a line each; empty where there is nothing.
[[nodiscard]] QString adviceOf(const core::Technique* technique);
// "11:30", with its day where that is not `beside`.
[[nodiscard]] QString timeBeside(core::Instant at, core::Day beside, const core::Clock& clock);
// "11:30, 5 March".
[[nodiscard]] QString timeAndDay(core::Instant at, const core::Clock& clock);

// The whole log by day.
[[nodiscard]] std::vector<TableRow> logRows(const core::JobFile& file, const core::Clock& clock);

// Why a step was not logged, with the lot and the unit where it is these.
[[nodiscard]] QString refusalOf(core::StepProblem problem, const core::LoggedStep& logged,
                                const core::Shelf& shelf);
// Why a clock was not started or stopped, a check not noted.
[[nodiscard]] QString sentence(core::ClockProblem problem);
[[nodiscard]] QString sentence(core::CheckProblem problem);

} // namespace headcap::app
