// The places of the job itself in a line. Inside of the line's reader.
#pragma once

#include <vector>

#include "core/treatment/known_places.h"
#include "core/treatment/line_words.h"

namespace headcap::core::line {

struct KnownPlaces {
    std::string text{};           // as the job words them
    bool isOverTechnique = false; // they take in words that said the technique
};

// Takes those that the line's reader would not know by itself, or not whole: "SR 11", "all five",
// "spine and joints" where "lined spine" said the technique.
[[nodiscard]] KnownPlaces takeKnownPlaces(Words& words, const std::vector<KnownPlace>& places);

} // namespace headcap::core::line
