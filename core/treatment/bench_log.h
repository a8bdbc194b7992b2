// What is done to the bench log: a step is logged with what it used, struck, or corrected by a
// further one. Each is one change: the step, its uses, and the ledger entries that answer for
// them. Nothing of the log is ever removed.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "core/materials/shelf.h"
#include "core/treatment/step.h"

namespace headcap::core {

enum class StepProblem {
    nothingSaid,    // no technique, no place, no words
    negativeTime,   // minutes below nothing
    lotUnknown,     // a lot the shelf does not hold
    unitDiffers,    // an amount from which nothing leads to the unit its lot is counted in
    amountNotAbove, // an amount of nothing, or less
    reasonMissing,  // struck or corrected without a word why
    alreadyStruck,
    notAStep, // the step to be struck is not in the job's log
};

struct LoggedStep;
// "Lot 26-003 is counted in sheets, and 2 pieces can't be taken from it."; empty where every amount
// can be taken from its lot.
[[nodiscard]] std::string unitSentence(const LoggedStep& logged, const Shelf& shelf);

// A step as it is to be written: the uses name the step and its job.
struct LoggedStep {
    Step step;
    std::vector<MaterialUse> uses{};
};

[[nodiscard]] tl::expected<Change, StepProblem> logStep(const LoggedStep& logged,
                                                        const Shelf& shelf,
                                                        const TechniquesInForce& techniques,
                                                        IdSource& ids);

struct Striking {
    Id<Person> who;
    Instant at;
    std::string why{};
};

// What its uses took from lots goes back by contrary entries.
[[nodiscard]] tl::expected<Change, StepProblem>
strikeStep(const JobFile& file, const Id<Step>& step, const Striking& striking, IdSource& ids);

// Strikes the old step and logs the new one as its correction; what named the old step
// (facsimiles, photographs) names the new one.
[[nodiscard]] tl::expected<Change, StepProblem>
correctStep(const JobFile& file, const Id<Step>& old, LoggedStep rightly, const Shelf& shelf,
            const Striking& striking, IdSource& ids);

// The ledger entries "used" of one use that still stand: those without their contrary.
[[nodiscard]] std::vector<LedgerEntry> standingEntries(const std::vector<LedgerEntry>& ledger,
                                                       const Id<MaterialUse>& use);

// "Tipping in, K5": a step in a few words.
[[nodiscard]] std::string stepTitle(const Step& step, const TechniquesInForce& techniques);

} // namespace headcap::core
