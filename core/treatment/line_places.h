// Where in a book a line of the log points: leaves, pages, plates, gatherings, and the named parts
// of a binding. Inside of the line's reader.
#pragma once

#include <cstddef>
#include <string>

#include "core/treatment/line_words.h"

namespace headcap::core::line {

// Takes all places in the line; gives them as one text, those said apart joined by ", ".
[[nodiscard]] std::string takePlaces(Words& words, std::string_view whole);

// "K5", "2A3v", "C1–C4", "π2", "*3": a leaf or a range of leaves by signature.
[[nodiscard]] bool isLeafWord(std::string_view text);

} // namespace headcap::core::line
