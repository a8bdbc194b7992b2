// What the words of a step say was taken out of the book, and what became of it: "old lining, kept
// in envelope 2".
#pragma once

#include <string>
#include <string_view>

#include "core/treatment/step.h"

namespace headcap::core {

struct TakenOut {
    std::string what{};
    std::string fate{}; // empty: not said; "kept" alone does not say where
};

// Of a removal all its words; of other work only what plainly left the book.
[[nodiscard]] TakenOut takenOutIn(std::string_view words, StepKind kind);

} // namespace headcap::core
