// The technique in a line of the log, and the part of the book that its own words name. Inside of
// the line's reader.
#pragma once

#include <span>
#include <string>

#include "core/treatment/line_words.h"

namespace headcap::core::line {

// The first that is said, else the first that is named, else one said with a slip of the hand
// ("uncoverd").
[[nodiscard]] const Technique* takeTechnique(Words& words, std::span<const Technique> techniques);

// "lined spine", "reattached upper board", "set label back".
struct PlaceInTechnique {
    std::string place;
    bool isOfItsOwn = false; // it says more than another place in the line: a side, a label
};

// Once the technique is taken.
[[nodiscard]] PlaceInTechnique placeInTechnique(const Words& words);

} // namespace headcap::core::line
