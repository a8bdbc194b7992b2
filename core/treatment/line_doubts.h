// What of a line of the bench log would be kept as mere words, or is most likely not meant: asked
// once before it is logged as it stands.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/record/job_file.h"
#include "core/treatment/step_line.h"

namespace headcap::core {

struct LineDoubt {
    enum class Kind {
        unknownLot,    // what: the numbers
        noLot,         // what: a material named without one
        denied,        // it says what was not done
        pause,         // no work at all
        mixing,        // a lot is made, and nothing done to the book
        striking,      // a step that was logged is to be struck
        severalTimes,  // what: the one it would be logged with
        timeOfEach,    // of how many is not said; what: the one it would be logged with
        moreThanItHad, // what: the minutes; why: the time between its two hours, which is less
        severalPeople,
        absentPlace, // what: the place; why: the reason that it is not in the book
        stillToCome,
        noTechnique,
    };
    Kind kind;
    std::string what{};
    std::string why{};
    friend bool operator==(const LineDoubt&, const LineDoubt&) = default;
};

// In the order in which they are asked. `file` null: no job is open.
[[nodiscard]] std::vector<LineDoubt> doubtsOf(std::string_view text, const StepLine& line,
                                              Instant end, Instant now, const JobFile* file);

// The words that look like the number of a lot, and are none.
[[nodiscard]] std::vector<std::string> unknownLots(std::string_view text, const StepLine& line);

// Why there is no such place in the book, where that is without a doubt; else empty.
[[nodiscard]] std::string absentPlace(const StepLine& line, const JobFile* file);

} // namespace headcap::core
