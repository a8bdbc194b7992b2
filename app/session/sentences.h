// A code in core, a sentence here: what a person reads when something was refused, failed, or
// could not be read. One clear sentence each; what to do next where there is something to do.
#pragma once

#include <QString>

#include "core/record/change.h"
#include "core/record/stores.h"
#include "core/treatment/bench_log.h"
#include "core/values/text_error.h"

namespace headcap::app {

[[nodiscard]] QString sentence(const core::Refusal& refusal);
[[nodiscard]] QString sentence(const core::StoreError& error);
[[nodiscard]] QString sentence(core::StepProblem problem);

// What a field takes, for the sentence beside it.
enum class Reading { length, amount, money, strength, day, bookDate, minutes, number };
[[nodiscard]] QString sentence(const core::TextError& error, Reading reading);
// "148 mm, 14.8 cm or 5 3/4 in": the field's example.
[[nodiscard]] QString example(Reading reading);

} // namespace headcap::app
