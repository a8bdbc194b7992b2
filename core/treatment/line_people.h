// Who, in a line of the log: "by Ana", "by AK", or initials at its beginning or end. Inside of the
// line's reader.
#pragma once

#include <optional>
#include <span>

#include "core/treatment/line_words.h"

namespace headcap::core::line {

[[nodiscard]] std::optional<Id<Person>> takePerson(Words& words, std::span<const Person> people);

} // namespace headcap::core::line
