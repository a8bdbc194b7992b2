// What the words being typed at the end of a line of the log may become: a technique as people say
// it, a place of the job's own, a lot by its number or by its kind, a person after "by". The same
// line over the same vocabulary, places, lots and people always completes the same.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/treatment/step_line.h"

namespace headcap::core {

struct LineCompletion {
    LinePart part = LinePart::description;
    std::size_t begin = 0; // bytes of the line from here to its end give way to the text
    std::string text;      // "tipped in", "26-014"
    std::string says;      // "Tipping in", "wheat starch paste, 18 g left"
};

// The techniques that an approved line still waits for come first, then in the order of the
// vocabulary; the newest lots first, and none that is used up.
[[nodiscard]] std::vector<LineCompletion> completionsOf(std::string_view line,
                                                        const LineContext& context,
                                                        const std::vector<std::string>& awaited,
                                                        std::size_t most);

// A technique as one says that it was done: "tipped in".
[[nodiscard]] std::string asOneSays(const Technique& technique);

// The line as it reads when a completion has been taken: with a blank after it, to type on.
[[nodiscard]] std::string completed(std::string_view line, const LineCompletion& completion);

} // namespace headcap::core
