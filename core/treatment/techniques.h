// The techniques of the trade: what each is done to, what it usually takes, whether it can be
// undone and how, what belongs to doing it well. Data with sources in resources/techniques.json;
// minutes are house values from practice, to start an estimate from.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/treatment/step.h"
#include "core/values/time.h"

namespace headcap::core {

struct Technique {
    std::string key;  // "tipping_in"
    std::string name; // "Tipping in"
    StepKind kind = StepKind::treatment;
    // As people write it in the log, lower case, longest first: doing it, and naming it, which
    // says less ("guard" is also a thing that is tipped in).
    std::vector<std::string> said;
    std::vector<std::string> named;
    std::string doneTo; // "leaves"
    std::vector<std::string> materials;
    Minutes minutes{0};       // usual, for one of what it is done to; 0: not known
    std::string minutesBasis; // "a leaf"
    Minutes sets{0};          // usual setting, drying or pressing time
    Reversibility reversibility = Reversibility::unknown;
    std::string undoing;
    bool adds = false;       // something is put into the book: a material must be named
    bool wets = false;       // moisture reaches the leaves: media are tested before
    bool testsMedia = false; // the inks and colours are tested first
    bool disbinds = false;   // the structure is taken down: collation finished and told before
    std::vector<std::string> checks;
    std::vector<std::string> cautions;
    std::vector<std::string> before; // what must have been done first
    std::string advice;              // for the care of a book so treated
    std::string aat;                 // Getty AAT identifier
    std::vector<std::string> sources;
};

// As they ship; what a workshop goes by is TechniquesInForce.
[[nodiscard]] const std::vector<Technique>& techniques();

} // namespace headcap::core
