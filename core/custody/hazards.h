// The hazards of old books, as a vocabulary: where each is likely, what confirms it, and the
// caution that goes with it, which always defers to local rules and qualified persons. Data with
// sources in resources/hazards.json.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/custody/custody.h"
#include "core/record/job_file.h"

namespace headcap::core {

struct HazardKind {
    std::string key; // "arsenical_green", as a Hazard's term
    std::string name;
    std::string where;
    std::vector<std::string> likely; // findings that suggest it, "cloth/vivid_green"
    std::vector<std::string> words;  // of a description of the binding that suggest it
    std::string confirmedBy;
    std::string caution; // at the bench
    std::string report;  // in the advice to the owner
    std::vector<std::string> sources;
};

[[nodiscard]] const std::vector<HazardKind>& hazardKinds();
[[nodiscard]] const HazardKind* hazardNamed(std::string_view key);
// Its name, or the workshop's own word.
[[nodiscard]] std::string hazardName(std::string_view keyOrWord);

// "suspected", "not tested".
[[nodiscard]] std::string_view wordsFor(HazardState state);

// Hazards that findings, or the description of the binding, suggest, and of which the record says
// nothing yet.
[[nodiscard]] std::vector<const HazardKind*> likelyHazards(const JobFile& file);

} // namespace headcap::core
