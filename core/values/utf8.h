// Text that came from outside: whether it is UTF-8 at all.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace headcap::core {

// The line, from 1, on which it stops being UTF-8; nothing where all of it is.
[[nodiscard]] std::optional<std::size_t> firstLineNotUtf8(std::string_view text);

} // namespace headcap::core
