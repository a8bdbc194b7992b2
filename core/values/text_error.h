// Why a text that a person typed could not be read as a value: a code and a place, no sentence.
#pragma once

#include <cstddef>

namespace headcap::core {

enum class TextProblem {
    empty,
    notANumber,
    unitMissing,
    unitUnknown,
    tooLarge,
    tooFine,    // finer than the exact count can hold
    outOfRange, // a month 13, a negative size
    trailing,   // something is left over after the value
    malformed,
};

struct TextError {
    TextProblem problem = TextProblem::malformed;
    std::size_t at = 0; // byte offset into the text

    friend bool operator==(const TextError&, const TextError&) = default;
};

} // namespace headcap::core
