// Who, in a line of the log: "by Ana", "by AK", initials or a name at its beginning or end, "with
// Ana". Inside of the line's reader.
#pragma once

#include <optional>
#include <span>

#include "core/treatment/line_words.h"

namespace headcap::core::line {

struct Who {
    std::optional<Id<Person>> person;
    bool areSeveral = false; // a step is by one; the others' names stay words
};
[[nodiscard]] Who takePeople(Words& words, std::span<const Person> people);

} // namespace headcap::core::line
