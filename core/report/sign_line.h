// Where somebody signs: drawn as a ruled line with room for a hand above it.
#pragma once

namespace headcap::core::report {

inline constexpr const char* kSignLine = "……………………………………………………………………";

} // namespace headcap::core::report
