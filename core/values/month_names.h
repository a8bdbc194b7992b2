// The months as English writes them.
#pragma once

#include <array>
#include <string_view>

namespace headcap::core {

inline constexpr auto kMonthNames =
    std::to_array<std::string_view>({"January", "February", "March", "April", "May", "June", "July",
                                     "August", "September", "October", "November", "December"});

} // namespace headcap::core
