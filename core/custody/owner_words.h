// The words an owner is chosen by: the name, and where several bear it what tells them apart.
#pragma once

#include <span>
#include <string>

#include "core/custody/people.h"

namespace headcap::core {

// "R. Hale"; beside another of that name "R. Hale, Harrow Lane 4": the first that is known of
// address, contact, electronic mail and telephone, else the kind.
[[nodiscard]] std::string ownerWords(const Owner& owner, std::span<const Owner> others);

} // namespace headcap::core
