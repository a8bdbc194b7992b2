#include "core/custody/hazard_evidence.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "core/custody/hazards.h"
#include "core/values/english.h"
#include "core/values/fold.h"

namespace headcap::core {
namespace {

// What shows itself: red dust on the glove, a nail, a splinter.
constexpr std::array<std::string_view, 2> kSeen{"red_rot_dust", "iron_or_glass"};

// Beginnings of the words for an analysis, folded.
constexpr std::array kAnalyses = std::to_array<std::string_view>(
    {"xrf", "fluoresc", "raman", "ftir", "chromatog", "gc-ms", "spectro", "cultur", "swab", "atp",
     "laborator", "analy", "spot test", "test strip", "assay", "colony"});

} // namespace

bool isClearedByLookAlone(const Hazard& hazard) {
    if (hazard.state != HazardState::cleared || hazard.method.empty() ||
        std::ranges::find(kSeen, hazard.term) != kSeen.end()) {
        return false;
    }
    const std::string method = foldForSearch(hazard.method);
    return std::ranges::none_of(kAnalyses, [&](std::string_view analysis) {
        return method.find(analysis) != std::string::npos;
    });
}

bool stillWarns(const Hazard& hazard) {
    return hazard.state != HazardState::cleared || isClearedByLookAlone(hazard);
}

std::string standingOf(const Hazard& hazard) {
    if (!isClearedByLookAlone(hazard)) {
        return std::string{wordsFor(hazard.state)};
    }
    const std::string seen = hazard.term == "mould" ? "not seen active" : "nothing seen";
    return hazard.onDay ? seen + " on " + dayText(*hazard.onDay) : seen;
}

} // namespace headcap::core
