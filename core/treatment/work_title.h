// What a piece of work is called: "Guarding, K7".
#pragma once

#include <string>
#include <string_view>

namespace headcap::core {

// Without the place where the work names it itself: "Lining the spine". Of no work: the place.
[[nodiscard]] std::string workTitle(const std::string& work, const std::string& place);

} // namespace headcap::core
