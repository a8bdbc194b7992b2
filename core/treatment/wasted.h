// What left the shelf and did not come into the book: a use that says so by its role.
#pragma once

#include <string_view>

#include "core/treatment/step.h"

namespace headcap::core {

inline constexpr std::string_view kWastedRole = "wasted";

[[nodiscard]] inline bool isWasted(const MaterialUse& use) {
    return use.role == kWastedRole;
}

} // namespace headcap::core
