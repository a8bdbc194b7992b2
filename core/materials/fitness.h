// Whether a lot is fit for what it is to be used for: rules, each with its reason and its source,
// shown where a lot is chosen and asked again by the audit. Who uses it all the same says why.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/materials/material.h"
#include "core/record/job_file.h"

namespace headcap::core {

enum class FitnessRule {
    pastDate,
    nearDate,
    notPermanent,    // pH or alkali reserve outside ISO 9706, and it stays in the book
    notReversible,   // and the record promises that it can be undone
    tooHeavy,        // a repair heavier than what it mends
    grainAcross,     // of what is pasted to the spine or the joint
    grainUnsaid,     // and nobody said how it lies
    bufferedOnPrint, // alkali beside a cyanotype
    claimUnproven,   // permanent, it is said, and nothing shows it
    printUnstable,   // inks of a facsimile of which nothing is known
};

// What a lot is to be used for.
struct FitnessPurpose {
    Day on;
    bool stays = true; // something of it stays in the book
    bool isPromisedReversible = false;
    bool isRepairOfPaper = false; // of a tear, a loss, a fold
    // Of what it mends, in mg/m²; where nobody has weighed it, no weight is held against a lot.
    std::optional<std::int64_t> mendedMgM2{};
    bool touchesCyanotype = false;
    bool isForFacsimile = false;
    bool followsSpine = false; // it lies along the spine, or folds there
    GrainAtSpine grainAtSpine = GrainAtSpine::notSaid;
};

struct FitnessPoint {
    FitnessRule rule = FitnessRule::pastDate;
    bool asksReason = false; // or else is worth knowing
    std::string sentence{};  // without the lot's name: "was past its date on 3 April"
    std::string_view source{};
};

// In the order of the rules.
[[nodiscard]] std::vector<FitnessPoint> fitnessOf(const Lot& lot, const Material& kind,
                                                  const FitnessPurpose& purpose);

// The purpose a use in the log speaks of, by its step, its technique and its book.
[[nodiscard]] FitnessPurpose purposeOf(const MaterialUse& use, const Step& step,
                                       const JobFile& file, Day on);
// The same for a step that is being written; the technique by its key.
[[nodiscard]] FitnessPurpose purposeOf(const MaterialUse& use, std::string_view technique,
                                       const JobFile* file, Day on);

// What comes in sheets, and may have a grain.
[[nodiscard]] bool isSheet(MaterialClass kind);

// What is said of the book, its works and its findings speaks of cyanotypes.
[[nodiscard]] bool speaksOfCyanotypes(const JobFile& file);

} // namespace headcap::core
