// Who is meant by initials or a name, as a command is told it.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/custody/people.h"

namespace headcap::core {

// Of those who work here now, the one with these initials or this whole name, in whatever case;
// nobody where several or none are called so.
[[nodiscard]] std::optional<Id<Person>> personCalled(std::span<const Person> people,
                                                     std::string_view words);

} // namespace headcap::core
